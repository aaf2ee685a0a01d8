import { useEffect, useState } from 'preact/hooks';
import { readTurnsOfDay, type TurnWithCorrections } from '../../application/review/read-turns-of-day';
import { useApp } from '../app';

/** The turns of a day, read again after every record; none while they are read, or when they cannot be. */
export function useTurnsOfDay(day: string): readonly TurnWithCorrections[] {
  const { bench } = useApp();
  const [found, setFound] = useState<{ day: string; turns: readonly TurnWithCorrections[] }>({
    day,
    turns: [],
  });
  const changes = bench.changes.value;
  useEffect(() => {
    let isCurrent = true;
    // The day itself says when the records cannot be read.
    readTurnsOfDay(bench, day).then(
      (turns) => isCurrent && setFound({ day, turns }),
      () => isCurrent && setFound({ day, turns: [] }),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, day, changes]);
  return found.day === day ? found.turns : [];
}
