import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/**
 * Writes down a time of the method as it was before the tablet came.
 *
 * @throws {RangeError} timeOldMethod requires a time above zero
 */
export function timeOldMethod(
  bench: Bench,
  { part, perPartMs, source, by }: { part: string; perPartMs: number; source: string; by: string },
): void {
  if (!(perPartMs > 0 && Number.isFinite(perPartMs))) {
    throw new RangeError('timeOldMethod requires a time above zero');
  }
  const fact = { kind: 'old-method-timed', part, perPartMs, source: source.trim(), by: by.trim() } as const;
  bench.record(SHOP_STREAM, [fact]);
}
