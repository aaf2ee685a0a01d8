import { requireReadings } from './require-readings';
import { sumOfSquaredDeviations } from './sum-of-squared-deviations';

/**
 * Population standard deviation: the spread of exactly these readings, which is what the short form of the
 * required-readings rule uses.
 *
 * Formula: σ = √( Σ(x − mean)² / n )
 *   x  reading, any one unit; σ in the unit of x; n a count
 *
 * @throws {RangeError} populationStandardDeviation requires at least one reading
 * @throws {RangeError} populationStandardDeviation requires finite readings no larger than 1e150 in size
 * @example
 * populationStandardDeviation([2, 4, 4, 4, 5, 5, 7, 9]) // => 2
 */
export function populationStandardDeviation(readings: readonly number[]): number {
  requireReadings('populationStandardDeviation', readings, 1);
  return Math.sqrt(sumOfSquaredDeviations(readings) / readings.length);
}
