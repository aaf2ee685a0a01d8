import type { PartInHand } from '../records/turn-fact';
import type { Doubt } from './doubt';
import type { Turn } from './turn';
import { wrongParts } from './wrong-part';

/**
 * What is open in a turn, in order of time: its own doubts, and runs whose times fit a part of the shop that the
 * turn itself does not name. The latter are suggestions alone: a target that is set today takes no part of last
 * month out of a mean.
 */
export function openDoubts(turn: Turn, shopParts: readonly PartInHand[]): Doubt[] {
  const more = wrongParts(turn.cycles, shopParts, turn.confirmedParts);
  return [...turn.doubts, ...more].sort((a, b) => a.toMs - b.toMs);
}
