import { median } from '../../statistics/median';
import type { MethodRevision } from '../shop/shop';
import type { PartOfDay } from './part-of-day';
import type { DayReview } from './review-day';

/** A part on one day of its run. */
export interface RunDay {
  readonly day: string;
  readonly of: PartOfDay & { readonly meanMs: number };
}

/** A step in a run: from this day on the part was made by another method. */
export interface MethodStep {
  /** The first day of the run by that method; its place in the run, from 0, is never the first. */
  readonly from: number;
  readonly revision: number;
}

/** The daily averages of one part in time order: a run chart in numbers. */
export interface PartRun {
  /** Oldest first; days on which no such part was made, or none that counts, are not there. */
  readonly days: readonly RunDay[];
  /** Where the method changed within these days, in order; one that was revised twice between two of them changed once. */
  readonly steps: readonly MethodStep[];
  /**
   * The middle one of the daily averages since the newest step, milliseconds: half of those days lie above it.
   * Days by another method are another run, and a middle across both is the time of neither. Null without a day.
   */
  readonly medianMs: number | null;
}

/** The run of one part over days that may come in any order. `methods`: the part's revisions, oldest first. */
export function partRun(
  reviews: readonly DayReview[],
  part: string,
  methods: readonly Pick<MethodRevision, 'revision' | 'writtenOn'>[] = [],
): PartRun {
  const days = [...reviews]
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .flatMap(({ day, parts }) => {
      const of = parts.find((each) => each.part === part);
      return of && of.meanMs !== null ? [{ day, of: { ...of, meanMs: of.meanMs } }] : [];
    });
  const steps = new Map<number, MethodStep>();
  for (const { revision, writtenOn } of methods) {
    const from = days.findIndex(({ day }) => day >= writtenOn);
    if (from > 0) steps.set(from, { from, revision });
  }
  const inOrder = [...steps.values()].sort((a, b) => a.from - b.from);
  const means = days.slice(inOrder.at(-1)?.from ?? 0).map(({ of }) => of.meanMs);
  return { days, steps: inOrder, medianMs: means.length > 0 ? median(means) : null };
}
