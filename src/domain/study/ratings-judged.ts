import type { Reading } from './study';

/** Of the ratings of a study that are known to be judged or carried on, how many were judged each for itself. */
export interface RatingsJudged {
  readonly judged: number;
  readonly all: number;
}

/**
 * How many ratings were judged each for itself, by a tap or on the sheet, and of how many; the others stood from a reading before. Null
 * where the records do not say: a study from a table, or an older one.
 */
export function ratingsJudged(readings: readonly Reading[]): RatingsJudged | null {
  const known = readings.filter(({ judged, row }) => judged !== undefined && row.observedMs !== null);
  if (known.length === 0) return null;
  return { judged: known.filter(({ judged }) => judged).length, all: known.length };
}
