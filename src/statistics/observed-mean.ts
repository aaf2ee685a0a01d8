import { compensatedSum } from './compensated-sum';
import { requireReadings } from './require-readings';

/**
 * Observed mean: the arithmetic mean of the readings used (also called selected or average observed time).
 *
 * Formula: mean = Σx / n
 *   x  reading, any one unit; n  number of readings, a count; mean in the unit of x
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design (from memory); any textbook.
 *
 * @throws {RangeError} observedMean requires at least one reading
 * @throws {RangeError} observedMean requires finite readings no larger than 1e150 in size
 * @example
 * observedMean([8, 10, 9, 11]) // => 9.5
 */
export function observedMean(readings: readonly number[]): number {
  requireReadings('observedMean', readings, 1);
  return compensatedSum(readings) / readings.length;
}
