import { plainPart } from '../../domain/records/plain-part';
import type { PartInHand } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/**
 * The next part is of another kind. What the time since the last tap was is asked, and can be said later. The part
 * that is in hand, chosen again, changes nothing unless its target is another by now.
 */
export function changePart(bench: Bench, next: PartInHand): void {
  const turn = bench.turn.value;
  const isInHand = turn?.inHand.part === next.part && turn.inHand.targetMs === next.targetMs;
  if (turn && turn.status !== 'ended' && !isInHand) {
    bench.record(turn.id, [{ kind: 'part-changed', ...plainPart(next), before: 'asked' }]);
  }
}
