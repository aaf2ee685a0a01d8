import { median } from '../../statistics/median';
import type { PartOfDay } from './part-of-day';
import type { DayReview } from './review-day';

/** A part on one day of its run. */
export interface RunDay {
  readonly day: string;
  readonly of: PartOfDay & { readonly meanMs: number };
}

/** The daily averages of one part in time order: a run chart in numbers. */
export interface PartRun {
  /** Oldest first; days on which no such part was made, or none that counts, are not there. */
  readonly days: readonly RunDay[];
  /** The middle one of the daily averages, milliseconds: half the days lie above it. Null without a day. */
  readonly medianMs: number | null;
}

/** The run of one part over days that may come in any order. */
export function partRun(reviews: readonly DayReview[], part: string): PartRun {
  const days = [...reviews]
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .flatMap(({ day, parts }) => {
      const of = parts.find((each) => each.part === part);
      return of && of.meanMs !== null ? [{ day, of: { ...of, meanMs: of.meanMs } }] : [];
    });
  const means = days.map(({ of }) => of.meanMs);
  return { days, medianMs: means.length > 0 ? median(means) : null };
}
