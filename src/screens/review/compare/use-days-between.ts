import { useEffect, useState } from 'preact/hooks';
import { readSummaries } from '../../../application/review/read-summaries';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { useApp } from '../../app';
import { useLogChanges } from '../../use-log-changes';

/** The summaries of the days from and to, oldest first, however far back they lie; null while they are read. */
export function useDaysBetween(from: string, to: string): readonly DaySummary[] | null {
  const { bench, summaries } = useApp();
  const [found, setFound] = useState<{ from: string; to: string; days: readonly DaySummary[] } | null>(null);
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    summaries()
      .then((shelf) => readSummaries(bench, shelf, { from, to }))
      .then(
        ({ days }) => isCurrent && setFound({ from, to, days }),
        () => isCurrent && setFound({ from, to, days: [] }),
      );
    return () => {
      isCurrent = false;
    };
  }, [bench, summaries, from, to, changes]);
  return found?.from === from && found.to === to ? found.days : null;
}
