import type { Bench } from '../bench';
import { lotsOfToday } from './lots-of-today';
import { requireParts } from './require-parts';

/**
 * A lot arrives at the cell, at the moment of the call.
 *
 * @throws {RangeError} lotArrives requires whole parts from 1 to 100000
 */
export async function lotArrives(bench: Bench, parts: number, lot = ''): Promise<void> {
  requireParts('lotArrives', parts);
  const stamp = bench.clock.now();
  bench.record(await lotsOfToday(bench, stamp), [{ kind: 'lot-arrived', parts, lot: lot.trim() }], stamp);
}
