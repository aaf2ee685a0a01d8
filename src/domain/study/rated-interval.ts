import { meanInterval } from '../../statistics/mean-interval';
import { studentQuantile } from '../../statistics/student-quantile';
import type { StudyRow } from './study-row';

/** The numbers behind the ± of an element, on rated times in milliseconds. */
export interface RatedInterval {
  readonly n: number;
  readonly mean: number;
  readonly standardDeviation: number;
  /** Two-sided Student quantile on n − 1 degrees of freedom. */
  readonly t: number;
  readonly halfWidth: number;
}

/** The interval of an element's mean normal time, step by step; null below two readings used. */
export function ratedInterval(rows: readonly StudyRow[], confidence: number): RatedInterval | null {
  const rated = rows.flatMap(({ excluded, observedMs, ratingPct }) =>
    excluded === null && observedMs !== null ? [(observedMs * ratingPct) / 100] : [],
  );
  if (rated.length < 2 || rated.every((ms) => ms === 0)) return null;
  const { n, mean, standardDeviation, halfWidth } = meanInterval(rated, confidence);
  return { n, mean, standardDeviation, t: studentQuantile((1 + confidence) / 2, n - 1), halfWidth };
}
