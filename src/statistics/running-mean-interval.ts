import type { MeanInterval } from './mean-interval';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import type { RunningStatistics } from './running-statistics';
import { studentQuantile } from './student-quantile';

/**
 * Interval of the mean from running statistics: the live figure beside the watch.
 *
 * Formula: as in mean-interval.ts, with s = √(S/(n − 1))
 *   S  sum of squared deviations, unit squared; n a count; confidence a share
 * Source: as in mean-interval.ts.
 *
 * @throws {RangeError} runningMeanInterval requires at least two readings
 * @throws {RangeError} runningMeanInterval requires a confidence above 0 and below 1
 * @throws {RangeError} runningMeanInterval requires readings with a mean above 0
 * @example
 * runningMeanInterval({ n: 3, mean: 5, squares: 2 }, 0.95).standardDeviation // => 1
 */
export function runningMeanInterval(
  { n, mean, squares }: RunningStatistics,
  confidence: number,
): MeanInterval {
  if (n < 2) throw new RangeError('runningMeanInterval requires at least two readings');
  requireConfidence('runningMeanInterval', confidence);
  requireNumber('runningMeanInterval', 'readings with a mean above 0', mean, mean > 0);
  const standardDeviation = Math.sqrt(squares / (n - 1));
  const halfWidth = (studentQuantile((1 + confidence) / 2, n - 1) * standardDeviation) / Math.sqrt(n);
  return { mean, halfWidth, relativeHalfWidth: halfWidth / mean, standardDeviation, n };
}
