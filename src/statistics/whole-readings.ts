import { requireNumber } from './require-number';

/** Far above the rounding of a required-readings formula (about 1e-15), far below any printed digit. */
const SAME_WHOLE_NUMBER = 1e-12;

/**
 * Whole readings: a computed number of readings made into a count that can be taken.
 *
 * Rule: a raw value within one part in 10¹² of a whole number is that number; every other value is rounded up.
 *   So 426.0096 asks for 427, while 120.99999999999996 and 121.00000000000003 are both 121, whichever way the
 *   arithmetic happened to round.
 *   raw  number of readings, 0 or more; answer a count
 * Source: the trade rounds up, since fewer readings would miss the precision asked; the guard is ours.
 *
 * @throws {RangeError} wholeReadings requires a finite number of readings that is not negative
 * @example
 * wholeReadings(120.99999999999996) // => 121
 */
export function wholeReadings(raw: number): number {
  requireNumber('wholeReadings', 'a finite number of readings that is not negative', raw, raw >= 0);
  const nearest = Math.round(raw);
  return Math.abs(raw - nearest) <= SAME_WHOLE_NUMBER * Math.max(1, nearest) ? nearest : Math.ceil(raw);
}
