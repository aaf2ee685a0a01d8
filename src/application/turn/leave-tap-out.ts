import type { Bench } from '../bench';

/** A tap that was taken for a bounce was one: nothing changes, and nobody is asked again. */
export function leaveTapOut(bench: Bench, stream: string, tap: string, by?: string): void {
  bench.record(stream, [{ kind: 'tap-left-out', tap, ...(by ? { by } : {}) }]);
}
