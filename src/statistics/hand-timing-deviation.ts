import { requireNumber } from './require-number';

/** Deviation of one press about the event, in seconds. */
const ONE_PRESS = 0.07;

/**
 * Hand-timing deviation: what the hand adds to an element timed from one press to another, averaged over readings.
 *
 * Formula: √2·0.07 s/√n; the delay of 0.11 s in each press cancels between start and stop
 *   n  readings, a count; answer a standard deviation in seconds
 * Source: Manual timing in physics experiments: error and uncertainty, American Journal of Physics 87 (2019),
 *   p. 110 (4304 timings: one press 0.11 s late with deviation 0.07 s; start and stop 0 with 0.10 s).
 *
 * @throws {RangeError} handTimingDeviation requires a count of at least one reading
 * @example
 * handTimingDeviation(1).toFixed(2) // => '0.10'
 */
export function handTimingDeviation(n: number): number {
  requireNumber('handTimingDeviation', 'a count of at least one reading', n, n >= 1);
  return (Math.SQRT2 * ONE_PRESS) / Math.sqrt(n);
}
