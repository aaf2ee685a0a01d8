import type { Bench } from '../bench';

/**
 * Parts of a turn as somebody counted them by hand, on the trolley or the rack. A later count replaces it.
 *
 * @throws {RangeError} countParts requires a whole number of parts
 */
export function countParts(bench: Bench, stream: string, count: number, by?: string): void {
  if (!Number.isInteger(count) || count < 0)
    throw new RangeError('countParts requires a whole number of parts');
  bench.record(stream, [{ kind: 'parts-counted', count, ...(by ? { by } : {}) }]);
}
