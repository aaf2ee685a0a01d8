import type { CycleJudgement } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/**
 * One part, two parts for which one tap was missed, a part that was interrupted and stays out of means, or the first
 * piece after a set-up, whose time is set-up.
 */
export function judgeCycle(
  bench: Bench,
  stream: string,
  partDone: string,
  as: CycleJudgement,
  by?: string,
): void {
  bench.record(stream, [{ kind: 'cycle-judged', partDone, as, ...(by ? { by } : {}) }]);
}
