import { averageOfPart } from '../../domain/turn/average-of-part';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { roundedClockFace } from '../../i18n/rounded-clock-face';

/** Parts done in this turn, and the average of the part in hand; its target stands beside the clock. */
export function Tally({ turn }: { turn: Turn }) {
  const own = averageOfPart(turn, turn.inHand.part);
  const done = turn.cycles.filter(({ person }) => person === turn.person).length;
  return (
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
  );
}
