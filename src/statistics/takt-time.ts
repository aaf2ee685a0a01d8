import { requireNumber } from './require-number';

/**
 * Takt time: how often a part is wanted.
 *
 * Formula: takt = net time available / parts wanted in it
 *   net time  without breaks and planned meetings, any unit; the answer in it, for each part
 * Source: Jacobs & Chase, Operations and Supply Chain Management, chapter 8.
 *
 * @throws {RangeError} taktTime requires a time from 0 to 1e150
 * @throws {RangeError} taktTime requires a demand above 0
 * @example
 * taktTime(25200, 500) // => 50.4
 */
export function taktTime(available: number, demand: number): number {
  requireNumber('taktTime', 'a time from 0 to 1e150', available, available >= 0 && available <= 1e150);
  requireNumber('taktTime', 'a demand above 0', demand, demand > 0);
  return available / demand;
}
