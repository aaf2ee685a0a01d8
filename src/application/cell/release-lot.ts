import type { Bench } from '../bench';
import { lotsOfToday } from './lots-of-today';
import { requireParts } from './require-parts';

/**
 * Parts are free for the next operation, at the moment of the call: of the lot that is named, or of what came first.
 *
 * @throws {RangeError} releaseLot requires whole parts from 1 to 100000
 */
export async function releaseLot(bench: Bench, parts: number, lot = ''): Promise<void> {
  requireParts('releaseLot', parts);
  const stamp = bench.clock.now();
  bench.record(await lotsOfToday(bench, stamp), [{ kind: 'lot-released', parts, lot: lot.trim() }], stamp);
}
