import { observedMean } from './observed-mean';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';
import { sampleStandardDeviation } from './sample-standard-deviation';
import { studentQuantile } from './student-quantile';

/** A mean with the half-width of its interval, in the unit of the readings and as a share of the mean. */
export interface MeanInterval {
  readonly mean: number;
  readonly halfWidth: number;
  readonly relativeHalfWidth: number;
  readonly standardDeviation: number;
  readonly n: number;
}

/**
 * Interval of the mean: how far the mean of the work may lie from the mean of the readings taken.
 *
 * Formula: halfWidth = t·s/√n, relativeHalfWidth = halfWidth/mean
 *   t  two-sided Student quantile on n − 1 degrees of freedom; s  sample standard deviation and mean in the
 *   unit of the readings; n a count; confidence a share, 0.95 for 95 %
 *   It speaks of readings that are independent: of one operator on one day, see operator-day-interval.ts.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2.
 *
 * @throws {RangeError} meanInterval requires at least two readings
 * @throws {RangeError} meanInterval requires finite readings no larger than 1e150 in size
 * @throws {RangeError} meanInterval requires a confidence above 0 and below 1
 * @throws {RangeError} meanInterval requires readings with a mean above 0
 * @example
 * meanInterval([4, 5, 6], 0.95).halfWidth // => 2.484137711750330
 */
export function meanInterval(readings: readonly number[], confidence: number): MeanInterval {
  requireReadings('meanInterval', readings, 2);
  requireConfidence('meanInterval', confidence);
  const n = readings.length;
  const mean = observedMean(readings);
  requireNumber('meanInterval', 'readings with a mean above 0', mean, mean > 0);
  const standardDeviation = sampleStandardDeviation(readings);
  const t = studentQuantile((1 + confidence) / 2, n - 1);
  const halfWidth = (t * standardDeviation) / Math.sqrt(n);
  return { mean, halfWidth, relativeHalfWidth: halfWidth / mean, standardDeviation, n };
}
