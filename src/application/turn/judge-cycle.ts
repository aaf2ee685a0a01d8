import type { Bench } from '../bench';

/** One part, two parts for which one tap was missed, or a part that was interrupted and stays out of means. */
export function judgeCycle(
  bench: Bench,
  stream: string,
  partDone: string,
  as: 'one-part' | 'two-parts' | 'interrupted',
  by?: string,
): void {
  bench.record(stream, [{ kind: 'cycle-judged', partDone, as, ...(by ? { by } : {}) }]);
}
