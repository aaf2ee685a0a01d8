import { plainPart } from '../../domain/records/plain-part';
import type { PartInHand } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/**
 * Parts that were tapped under a wrong part are put under the right one, with its target. Where the last of
 * them is the newest of the turn in hand, the part in hand changes with them: the next tap is of that part too.
 */
export function recodeParts(
  bench: Bench,
  stream: string,
  partDone: readonly string[],
  to: PartInHand,
  { by, why }: { by: string; why: string },
): void {
  const turn = bench.turn.peek();
  const newest = turn?.cycles.at(-1);
  const goesOn =
    turn?.id === stream &&
    turn.status !== 'ended' &&
    newest !== undefined &&
    partDone.includes(newest.key) &&
    turn.inHand.part === newest.part;
  bench.record(stream, [{ kind: 'part-recoded', partDone, ...plainPart(to), by, why }]);
  if (goesOn) bench.record(stream, [{ kind: 'part-changed', ...plainPart(to) }]);
}
