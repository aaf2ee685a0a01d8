import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/**
 * Writes down a time of the method as it was before the tablet came, and one of the new taken by the same hand.
 *
 * @throws {RangeError} timeOldMethod requires a time above zero
 */
export function timeOldMethod(
  bench: Bench,
  {
    part,
    perPartMs,
    newPerPartMs,
    source,
    by,
  }: { part: string; perPartMs: number; newPerPartMs?: number; source: string; by: string },
): void {
  const areTimes = [perPartMs, newPerPartMs ?? perPartMs].every((ms) => ms > 0 && Number.isFinite(ms));
  if (!areTimes) {
    throw new RangeError('timeOldMethod requires a time above zero');
  }
  const fact = { kind: 'old-method-timed', part, perPartMs, source: source.trim(), by: by.trim() } as const;
  bench.record(SHOP_STREAM, [newPerPartMs === undefined ? fact : { ...fact, newPerPartMs }]);
}
