import { partsOfDay } from '../../domain/day/part-of-day';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { clockFace } from '../../i18n/format-duration';

/** Parts done in this turn, and the average of the part in hand beside its target. */
export function Tally({ turn }: { turn: Turn }) {
  const { part, targetMs } = turn.inHand;
  const own = partsOfDay(turn.cycles).find((line) => line.part === part);
  return (
    <div class="pace-tally">
      <p>
        <strong class="number pace-tally-figure">{turn.cycles.length}</strong>
        <span>{words.doneCount(turn.cycles.length)}</span>
      </p>
      <p>
        {own ? (
          <>
            <strong class="number pace-tally-figure">{clockFace(own.meanMs)}</strong>
            <span>
              {words.average(own.n)}, {words.averageTarget(targetMs)}
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
