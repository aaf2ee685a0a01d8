import { useEffect, useState } from 'preact/hooks';
import { readDay } from '../../application/review/read-day';
import type { DayReview } from '../../domain/day/review-day';
import { useApp } from '../app';

/** A day from those that were read, or from the log when it is older than they are. */
export function useOneDay(
  days: readonly DayReview[],
  chosen: string,
  isReady: boolean,
): { day: DayReview | null; isSought: boolean } {
  const { bench } = useApp();
  const [sought, setSought] = useState<{ chosen: string; day: DayReview | null } | null>(null);
  const known = days.find(({ day }) => day === chosen) ?? null;
  const isWanted = isReady && !known && chosen !== '';

  useEffect(() => {
    if (!isWanted) return;
    let isCurrent = true;
    readDay(bench, chosen).then(
      (day) => isCurrent && setSought({ chosen, day }),
      () => isCurrent && setSought({ chosen, day: null }),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, chosen, isWanted]);

  const isFound = sought?.chosen === chosen;
  return { day: known ?? (isFound ? sought.day : null), isSought: isWanted && !isFound };
}
