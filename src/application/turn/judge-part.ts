import type { PartOutcome } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/** Good, rework or scrap, for a part that was done. */
export function judgePart(bench: Bench, turn: string, partDone: string, outcome: PartOutcome): void {
  bench.record(turn, [{ kind: 'part-judged', partDone, outcome }]);
}
