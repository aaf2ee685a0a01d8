import { observedMean } from '../../statistics/observed-mean';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { studentQuantile } from '../../statistics/student-quantile';

/** What a shop can promise for a day. */
export interface DailyCapacity {
  readonly days: number;
  /** Good parts a day, mean and deviation. */
  readonly mean: number;
  readonly deviation: number;
  /** Student's quantile of the wanted share: the fewer the days, the larger. */
  readonly t: number;
  /** Good parts that are reached on the wanted share of days; never below nothing. */
  readonly promise: number;
}

/** Fewer days tell no spread. */
export const CAPACITY_DAYS = 5;

/**
 * A promise that is kept on a stated share of days, from what the days brought.
 *
 * Formula: promise = x̄ − t·s·√(1 + 1/n)
 *   x̄, s  mean and sample deviation of the good parts a day, over n days
 *   t     Student quantile of the share on n − 1 degrees of freedom, 0.9 for a promise kept on nine days of ten
 * The one-sided prediction bound of one day to come: seven days know neither mean nor spread of the others.
 * Source: G. J. Hahn and W. Q. Meeker, Statistical Intervals, prediction bound for one future observation.
 * The mean is kept on every second day only. A smooth quantile, because ten days have no tenth percentile of
 * their own. Null below five days.
 */
export function dailyCapacity(goodPerDay: readonly number[], keptShare: number): DailyCapacity | null {
  if (goodPerDay.length < CAPACITY_DAYS) return null;
  const mean = observedMean(goodPerDay);
  const deviation = sampleStandardDeviation(goodPerDay);
  const days = goodPerDay.length;
  const t = studentQuantile(keptShare, days - 1);
  const promise = Math.max(0, mean - t * deviation * Math.sqrt(1 + 1 / days));
  return { days, mean, deviation, t, promise };
}

/** On how many of the days a promise would have been kept. */
export function daysKept(goodPerDay: readonly number[], promise: number): number {
  return goodPerDay.filter((good) => good >= promise).length;
}
