import { plainPart } from '../../domain/records/plain-part';
import type { PartInHand } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/** The next part is of another kind. What the time since the last tap was is asked, and can be said later. */
export function changePart(bench: Bench, next: PartInHand): void {
  const turn = bench.turn.value;
  if (turn && turn.status !== 'ended') {
    bench.record(turn.id, [{ kind: 'part-changed', ...plainPart(next), before: 'asked' }]);
  }
}
