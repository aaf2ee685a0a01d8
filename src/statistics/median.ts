import { requireReadings } from './require-readings';

/**
 * Median: the middle reading in order of size; with an even count, the mean of the two in the middle.
 *
 *   readings in any one unit; answer in the same
 * Source: any textbook; the quantile of type 7 at one half. Not taken from quantile.ts, whose package would come with
 *   the first screen.
 *
 * @throws {RangeError} median requires at least one reading
 * @throws {RangeError} median requires finite readings no larger than 1e150 in size
 * @example
 * median([9, 1, 5, 2]) // => 3.5
 */
export function median(readings: readonly number[]): number {
  requireReadings('median', readings, 1);
  const sorted = Float64Array.from(readings).sort();
  const middle = sorted.length >> 1;
  const upper = sorted[middle]!;
  return sorted.length % 2 === 1 ? upper : (sorted[middle - 1]! + upper) / 2;
}
