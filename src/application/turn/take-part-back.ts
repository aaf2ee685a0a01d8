import type { Bench } from '../bench';

/** A part that was set aside goes into the means again. */
export function takePartBack(bench: Bench, stream: string, partDone: string, by: string): void {
  bench.record(stream, [{ kind: 'part-taken-back', partDone, by }]);
}
