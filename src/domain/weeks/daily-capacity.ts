import { normalQuantile } from '../../statistics/normal-quantile';
import { observedMean } from '../../statistics/observed-mean';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';

/** What a shop can promise for a day. */
export interface DailyCapacity {
  readonly days: number;
  /** Good parts a day, mean and deviation. */
  readonly mean: number;
  readonly deviation: number;
  /** Good parts that are reached on the wanted share of days; never below nothing. */
  readonly promise: number;
}

/** Fewer days tell no spread. */
export const CAPACITY_DAYS = 5;

/**
 * A promise that is kept on a stated share of days, from what the days brought.
 *
 * Formula: promise = x̄ − z·s
 *   x̄, s  mean and sample deviation of the good parts a day
 *   z     normal quantile of the share, 0.9 for a promise kept on nine days of ten
 * The mean is kept on every second day only. A smooth quantile, because ten days have no tenth percentile of
 * their own. Null below five days.
 */
export function dailyCapacity(goodPerDay: readonly number[], keptShare: number): DailyCapacity | null {
  if (goodPerDay.length < CAPACITY_DAYS) return null;
  const mean = observedMean(goodPerDay);
  const deviation = sampleStandardDeviation(goodPerDay);
  const promise = Math.max(0, mean - normalQuantile(keptShare) * deviation);
  return { days: goodPerDay.length, mean, deviation, promise };
}

/** On how many of the days a promise would have been kept. */
export function daysKept(goodPerDay: readonly number[], promise: number): number {
  return goodPerDay.filter((good) => good >= promise).length;
}
