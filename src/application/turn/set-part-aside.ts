import type { Bench } from '../bench';

/** A part done stays a part done, and goes into no mean, for a cause that is written down. */
export function setPartAside(
  bench: Bench,
  stream: string,
  partDone: string,
  cause: string,
  by: string,
): void {
  bench.record(stream, [{ kind: 'part-set-aside', partDone, cause, by }]);
}
