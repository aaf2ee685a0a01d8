import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** One part is done: the operator's tap at one physical event. */
export function markPartDone(bench: Bench, at: Stamp): void {
  const turn = bench.turn.value;
  if (!turn || turn.status === 'ended') return;
  // How it is tapped stands in the turn once; a tap stays small.
  const { tapping: _, elements: __, ...done } = turn.inHand;
  bench.record(turn.id, [{ kind: 'part-done', ...done }], at);
}
