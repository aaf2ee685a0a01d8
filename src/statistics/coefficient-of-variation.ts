import { observedMean } from './observed-mean';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';
import { sampleStandardDeviation } from './sample-standard-deviation';

/**
 * Coefficient of variation: the spread of the readings as a share of their mean.
 *
 * Formula: cv = s/x̄
 *   s  sample standard deviation and x̄  mean, one unit; cv a share, 0.12 for 12 %
 * Source: NIST/SEMATECH Dataplot Reference Manual, "Coefficient of variation".
 *
 * @throws {RangeError} coefficientOfVariation requires at least two readings
 * @throws {RangeError} coefficientOfVariation requires finite readings no larger than 1e150 in size
 * @throws {RangeError} coefficientOfVariation requires readings with a mean above 0
 * @example
 * coefficientOfVariation([4, 5, 6]) // => 0.2
 */
export function coefficientOfVariation(readings: readonly number[]): number {
  requireReadings('coefficientOfVariation', readings, 2);
  const mean = observedMean(readings);
  requireNumber('coefficientOfVariation', 'readings with a mean above 0', mean, mean > 0);
  const share = sampleStandardDeviation(readings) / mean;
  requireNumber('coefficientOfVariation', 'a mean that is not lost in the spread', share, true);
  return share;
}
