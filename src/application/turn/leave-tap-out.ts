import type { Bench } from '../bench';

/** A tap was no part: of one that was taken for a bounce nobody is asked again, and the time of any other is the next part's. */
export function leaveTapOut(bench: Bench, stream: string, tap: string, by?: string): void {
  bench.record(stream, [{ kind: 'tap-left-out', tap, ...(by ? { by } : {}) }]);
}
