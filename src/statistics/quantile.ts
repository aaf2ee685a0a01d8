import { quantileSorted } from 'simple-statistics';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';

/**
 * Quantile, type 7: the value below which the share p of the readings lies, with straight lines between
 * neighbouring order statistics.
 *
 * Formula: h = (n − 1)·p;  quantile = x₍⌊h⌋₎ + (h − ⌊h⌋)·(x₍⌊h⌋+1₎ − x₍⌊h⌋₎), order statistics counted from 0
 *   x  reading, any one unit; p  share, 0 to 1; n a count; answer in the unit of x
 * Source: Hyndman & Fan, The American Statistician 50 (1996), pp. 361–365, definition 7. The default of R and
 *   of spreadsheets, so a foreman's check by hand agrees.
 *
 * @throws {RangeError} quantile requires at least one reading
 * @throws {RangeError} quantile requires finite readings no larger than 1e150 in size
 * @throws {RangeError} quantile requires a share from 0 to 1
 * @example
 * quantile([15, 20, 35, 40, 50], 0.4) // => 29
 */
export function quantile(readings: readonly number[], share: number): number {
  requireReadings('quantile', readings, 1);
  requireNumber('quantile', 'a share from 0 to 1', share, share >= 0 && share <= 1);
  return quantileSorted(Array.from(Float64Array.from(readings).sort()), share);
}
