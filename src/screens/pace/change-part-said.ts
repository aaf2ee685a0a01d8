import type { Bench } from '../../application/bench';
import { changePart } from '../../application/turn/change-part';
import { partInHand } from '../../application/turn/part-in-hand';
import type { Part } from '../../domain/shop/shop';
import { pace } from '../../domain/turn/pace';
import { turnQuestion as words } from '../../i18n/en/turn-question';

/** Changes to a part at once, and says so: with the time since the last tap, unless it is asked what that was. */
export function changePartSaid(bench: Bench, part: Part): string {
  changePart(bench, partInHand(part));
  const turn = bench.turn.peek();
  return turn ? words.changedTo(part.code, pace(turn, bench.clock.now()).partElapsedMs) : '';
}
