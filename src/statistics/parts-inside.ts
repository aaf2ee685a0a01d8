import { requireTimes } from './require-times';

/**
 * Little's law: parts inside are the rate at which they pass times how long they stay.
 *
 * Formula: L = λ·W
 *   λ  parts for each unit of time; W  mean lead time in that unit; L  mean parts inside, a count
 *   Exact over any window that begins and ends empty, whatever the order and the spread.
 * Source: J. D. C. Little, "A proof for the queuing formula L = λW", Operations Research 9 (1961), pp. 383–387.
 *
 * @throws {RangeError} partsInside requires times from 0 to 1e150
 * @example
 * partsInside(120, 4) // => 480
 */
export function partsInside(rate: number, leadTime: number): number {
  requireTimes('partsInside', [rate, leadTime]);
  return rate * leadTime;
}
