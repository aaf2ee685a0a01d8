import { useEffect, useState } from 'preact/hooks';
import { readTurnsOfDay, type TurnWithCorrections } from '../../application/review/read-turns-of-day';
import { useApp } from '../app';
import { useLogChanges } from '../use-log-changes';

/** The turns of a day, read again after every record; null while they are read for the first time. */
export function useTurnsOfDay(day: string): readonly TurnWithCorrections[] | null {
  const { bench } = useApp();
  const [found, setFound] = useState<{ day: string; turns: readonly TurnWithCorrections[] } | null>(null);
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    readTurnsOfDay(bench, day).then(
      (turns) => isCurrent && setFound({ day, turns }),
      () => isCurrent && setFound({ day, turns: [] }),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, day, changes]);
  return found?.day === day ? found.turns : null;
}
