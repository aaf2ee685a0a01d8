import type { Bench } from '../bench';

/** A tap that was taken for a bounce was a part all the same. */
export function countTap(bench: Bench, stream: string, tap: string, by?: string): void {
  bench.record(stream, [{ kind: 'tap-counted', tap, ...(by ? { by } : {}) }]);
}
