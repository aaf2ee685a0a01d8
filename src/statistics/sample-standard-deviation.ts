import { requireReadings } from './require-readings';
import { sumOfSquaredDeviations } from './sum-of-squared-deviations';

/**
 * Sample standard deviation: the spread of the readings, as an estimate for the work they were taken from.
 *
 * Formula: s = √( Σ(x − mean)² / (n − 1) )
 *   x  reading, any one unit; s in the unit of x; n a count
 *   n − 1 because the mean was estimated from the same readings.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.6; algorithm in sum-of-squared-deviations.ts.
 *
 * @throws {RangeError} sampleStandardDeviation requires at least two readings
 * @throws {RangeError} sampleStandardDeviation requires finite readings no larger than 1e150 in size
 * @example
 * sampleStandardDeviation([2, 4, 4, 4, 5, 5, 7, 9]) // => 2.138089935299395
 */
export function sampleStandardDeviation(readings: readonly number[]): number {
  requireReadings('sampleStandardDeviation', readings, 2);
  return Math.sqrt(sumOfSquaredDeviations(readings) / (readings.length - 1));
}
