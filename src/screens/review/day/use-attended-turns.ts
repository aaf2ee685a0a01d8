import { useEffect, useState } from 'preact/hooks';
import { readAttendedTurns } from '../../../application/review/read-attended-turns';
import type { AttendedTurn } from '../../../domain/day/summarise-day';
import { useApp } from '../../app';
import { useLogChanges } from '../../use-log-changes';

/** The turns of a day with their attended time, read when they are wanted; null until then. */
export function useAttendedTurns(day: string, isWanted: boolean): readonly AttendedTurn[] | null {
  const { bench } = useApp();
  const [found, setFound] = useState<readonly AttendedTurn[] | null>(null);
  const changes = useLogChanges();
  useEffect(() => {
    if (!isWanted) return;
    let isCurrent = true;
    readAttendedTurns(bench, day).then(
      (turns) => isCurrent && setFound(turns),
      () => isCurrent && setFound([]),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, day, isWanted, changes]);
  return found;
}
