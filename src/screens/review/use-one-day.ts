import { useEffect, useState } from 'preact/hooks';
import { readDay } from '../../application/review/read-day';
import type { DayReview } from '../../domain/day/review-day';
import { useApp } from '../app';

/** One day in full, read again whenever something is recorded. */
export function useOneDay(chosen: string): { day: DayReview | null; isSought: boolean } {
  const { bench } = useApp();
  const [found, setFound] = useState<{ chosen: string; day: DayReview | null } | null>(null);
  const changes = bench.changes.value;
  useEffect(() => {
    if (chosen === '') return;
    let isCurrent = true;
    readDay(bench, chosen).then(
      (day) => isCurrent && setFound({ chosen, day }),
      () => isCurrent && setFound({ chosen, day: null }),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, chosen, changes]);
  const isFound = found?.chosen === chosen;
  return { day: isFound ? found.day : null, isSought: chosen !== '' && !isFound };
}
