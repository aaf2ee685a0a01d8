import type { Bench } from '../bench';

/** The part of a run was the right one, however its times lie. The run is named by its first part done. */
export function confirmPart(bench: Bench, stream: string, partDone: string, by?: string): void {
  bench.record(stream, [{ kind: 'part-confirmed', partDone, ...(by ? { by } : {}) }]);
}
