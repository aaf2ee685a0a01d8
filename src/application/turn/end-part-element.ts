import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** The element in hand ends at this moment; with the last one the part is done, and that is another verb. */
export function endPartElement(bench: Bench, at: Stamp): void {
  const turn = bench.turn.value;
  const element = turn?.inHand.elements?.[turn.stepsDone];
  if (turn && turn.status !== 'ended' && element !== undefined) {
    bench.record(turn.id, [{ kind: 'element-done', element }], at);
  }
}
