import { useEffect, useState } from 'preact/hooks';
import { readLatestDays } from '../../application/review/read-latest-days';
import type { DayReview } from '../../domain/day/review-day';
import { useApp } from '../app';

export interface Days {
  readonly state: 'reading' | 'read' | 'trouble';
  readonly problem: string;
  /** Newest first. */
  readonly days: readonly DayReview[];
  readonly hasOlder: boolean;
}

/** The newest four weeks, read again whenever something is recorded; older ones when they are asked for. */
export function useDays(): Days & { readOlder: () => void; readAgain: () => void } {
  const { bench } = useApp();
  const [attempt, setAttempt] = useState(0);
  const [found, setFound] = useState<Days>({ state: 'reading', problem: '', days: [], hasOlder: false });
  const changes = bench.changes.value;

  const fail = (error: unknown) =>
    setFound((before) => ({ ...before, state: 'trouble', problem: String(error) }));

  // Read again after every record, and when it is asked for.
  useEffect(() => {
    let isCurrent = true;
    readLatestDays(bench).then(({ days, hasOlder }) => {
      if (!isCurrent) return;
      setFound((before) => {
        const oldest = days.at(-1)?.day ?? '';
        const older = before.days.filter(({ day }) => day < oldest);
        return {
          state: 'read',
          problem: '',
          days: [...days, ...older],
          hasOlder: older.length > 0 ? before.hasOlder : hasOlder,
        };
      });
    }, fail);
    return () => {
      isCurrent = false;
    };
  }, [bench, changes, attempt]);

  const readOlder = () => {
    const oldest = found.days.at(-1)?.day;
    if (oldest === undefined) return;
    readLatestDays(bench, oldest).then(
      ({ days, hasOlder }) =>
        setFound((before) => ({ ...before, days: [...before.days, ...days], hasOlder })),
      fail,
    );
  };
  return { ...found, readOlder, readAgain: () => setAttempt(attempt + 1) };
}
