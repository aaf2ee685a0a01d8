import { observedMean } from '../../statistics/observed-mean';
import type { StudyRow } from './study-row';

/** More than this share of an element's readings left out is a sign to look at the method, not the sheet. */
export const LARGE_EXCLUDED_SHARE = 0.1;

/** What leaving readings out does to an element: printed beside every mean, and never decided by it. */
export interface ExclusionEffect {
  readonly excluded: number;
  /** Of all readings of the element. */
  readonly share: number;
  /** Of them, those with a time of their own: a break point that was missed leaves none, or that of two elements. */
  readonly timed: number;
  /** Where the timed ones left out lie beside the mean of those used; null when none can be compared. */
  readonly side: 'above' | 'below' | 'both' | null;
}

/** Compares the readings left out of one element with those used. */
export function exclusionEffect(rows: readonly StudyRow[]): ExclusionEffect {
  const isUsed = ({ excluded, observedMs }: StudyRow) => excluded === null && observedMs !== null;
  const used = rows.filter(isUsed).map(({ observedMs }) => observedMs!);
  const excluded = rows.filter((row) => !isUsed(row));
  const timed = excluded.flatMap(({ observedMs, excluded: cause }) =>
    observedMs === null || cause === 'missed-break-point' ? [] : [observedMs],
  );
  const share = rows.length > 0 ? excluded.length / rows.length : 0;
  if (used.length === 0 || timed.length === 0)
    return { excluded: excluded.length, timed: timed.length, share, side: null };
  const mean = observedMean(used);
  const isAbove = timed.some((ms) => ms >= mean);
  const isBelow = timed.some((ms) => ms < mean);
  return {
    excluded: excluded.length,
    timed: timed.length,
    share,
    side: isAbove && isBelow ? 'both' : isAbove ? 'above' : 'below',
  };
}
