import { useEffect, useState } from 'preact/hooks';
import { readLatestSummaries } from '../../application/review/read-latest-summaries';
import type { DaySummary } from '../../domain/day/summarise-day';
import type { ReviewBook } from '../../domain/weeks/review-book';
import { useApp } from '../app';
import { useLogChanges } from '../use-log-changes';

export interface FoundSummaries {
  readonly state: 'reading' | 'read' | 'trouble';
  readonly problem: string;
  /** Newest first. */
  readonly days: readonly DaySummary[];
  readonly book: ReviewBook | null;
  readonly hasOlder: boolean;
  /** Days that are made anew, as far as they are; null when none is, or nobody waits. */
  readonly making: { readonly done: number; readonly of: number } | null;
}

const nothing: FoundSummaries = {
  state: 'reading',
  problem: '',
  days: [],
  book: null,
  hasOlder: false,
  making: null,
};

/** The summaries of the newest weeks, read again whenever something is recorded. */
export function useSummaries(weeks: number): FoundSummaries & { readonly readAgain: () => void } {
  const { bench, summaries } = useApp();
  const [attempt, setAttempt] = useState(0);
  const [found, setFound] = useState(nothing);
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    const tell = (change: Partial<FoundSummaries>) => {
      if (isCurrent) setFound((before) => ({ ...before, ...change }));
    };
    summaries()
      .then((shelf) => readLatestSummaries(bench, shelf, weeks, (done, of) => tell({ making: { done, of } })))
      .then(
        (latest) => tell({ ...latest, state: 'read', problem: '', making: null }),
        (error: unknown) => tell({ state: 'trouble', problem: String(error), making: null }),
      );
    return () => {
      isCurrent = false;
    };
  }, [bench, summaries, weeks, changes, attempt]);
  return { ...found, readAgain: () => setAttempt(attempt + 1) };
}
