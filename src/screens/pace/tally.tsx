import { averageOfPart } from '../../domain/turn/average-of-part';
import { isGood } from '../../domain/turn/earned-time';
import { ownOfTurn } from '../../domain/turn/own-of-turn';
import { reworkMarked } from '../../domain/turn/rework-waiting';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { roundedClockFace } from '../../i18n/rounded-clock-face';

/** Parts done in this turn, and the average of the part in hand; its target stands beside the clock. */
export function Tally({ turn }: { turn: Turn }) {
  const own = averageOfPart(turn, turn.inHand.part);
  const byThem = ownOfTurn(turn).cycles;
  const done = byThem.length;
  const shared = turn.cycles.filter(({ person, isShared }) => isShared && person === turn.person).length;
  const scrap = byThem.filter((cycle) => !isGood(cycle)).length;
  const { marked, waiting } = reworkMarked({ ...turn, cycles: byThem });
  const apart = asks.tally(scrap, marked.length, waiting.length, shared);
  return (
    <div>
      <div class="pace-tally">
        <p>
          <strong class="number pace-tally-figure">{done}</strong>
          <span>{words.doneCount(done)}</span>
        </p>
        <p>
          {own ? (
            <>
              <strong class="number pace-tally-figure">{roundedClockFace(own.meanMs)}</strong>
              <span>
                {words.average} <span class="pace-tally-of">{words.averageOf(own.n, own.done)}</span>
              </span>
            </>
          ) : (
            <>
              <strong class="pace-tally-figure">–</strong>
              <span>{words.averageNone}</span>
            </>
          )}
        </p>
      </div>
      {apart && <p class="pace-tally-apart number">{apart}</p>}
    </div>
  );
}
