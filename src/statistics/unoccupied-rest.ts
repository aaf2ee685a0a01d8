import { requireNumber } from './require-number';

/**
 * Unoccupied time that counts as rest: how much of a wait inside the machine's time can take the place of
 * fatigue allowance.
 *
 * Rule: 0.50 min or less counts nothing; from 0.50 to 1.50 min (t − 0.50)·1.5 counts; 1.50 min and more counts
 *   in full
 *   t  one unbroken wait, in minutes; answer in minutes. Personal needs are never met inside the cycle.
 * Source: International Labour Office, Introduction to Work Study (from memory: check it against the book).
 *
 * @throws {RangeError} unoccupiedRest requires a wait of 0 or more minutes
 * @example
 * unoccupiedRest(1) // => 0.75
 */
export function unoccupiedRest(waitMinutes: number): number {
  requireNumber('unoccupiedRest', 'a wait of 0 or more minutes', waitMinutes, waitMinutes >= 0);
  if (waitMinutes <= 0.5) return 0;
  return waitMinutes >= 1.5 ? waitMinutes : (waitMinutes - 0.5) * 1.5;
}
