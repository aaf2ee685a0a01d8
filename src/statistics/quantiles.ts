import { quantileSorted } from 'simple-statistics';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';

/**
 * Several quantiles of the same readings, type 7, each as quantile.ts gives it; sorted once, so that a hundred
 * thousand readings are still quick.
 *
 * Formula: as quantile
 *   readings  any one unit; shares  each from 0 to 1; answers in the unit of the readings, in the order of the shares
 * Source: Hyndman & Fan, The American Statistician 50 (1996), pp. 361–365, definition 7.
 *
 * @throws {RangeError} quantiles requires at least one reading
 * @throws {RangeError} quantiles requires finite readings no larger than 1e150 in size
 * @throws {RangeError} quantiles requires a share from 0 to 1
 * @example
 * quantiles([15, 20, 35, 40, 50], [0, 0.4, 1]) // => [15, 29, 50]
 */
export function quantiles(readings: ArrayLike<number>, shares: readonly number[]): number[] {
  const sorted = Float64Array.from(readings).sort() as Float64Array & number[];
  requireReadings('quantiles', sorted, 1);
  for (const share of shares) {
    requireNumber('quantiles', 'a share from 0 to 1', share, share >= 0 && share <= 1);
  }
  return shares.map((share) => quantileSorted(sorted, share));
}
