import type { Bench } from '../bench';

/** An answer or a correction holds no longer: it stays in the log, and so does who took it back. */
export function takeCorrectionBack(bench: Bench, stream: string, of: string, by: string): void {
  bench.record(stream, [{ kind: 'undone', of, by }]);
}
