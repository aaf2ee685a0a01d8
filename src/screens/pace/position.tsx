import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { outlook } from '../../i18n/en/outlook';
import { pace as words } from '../../i18n/en/pace';
import { useNow } from '../use-now';
import { PositionText } from './position-text';
import { plannedTime } from './time-of-day';

/** The position of the whole turn: the pace of the work first, then the plan, which stoppages count against. */
export function Position({ turn }: { turn: Turn }) {
  const { aheadMs, planAheadMs, partsAhead, breakEndsAtMs } = pace(turn, useNow().value);
  if (aheadMs === null || planAheadMs === null) {
    return <p class="pace-position">{turn.isLearning ? words.learning : words.noPosition}</p>;
  }
  const isNothingDone = turn.cycles.every(({ person }) => person !== turn.person);
  // Nobody is level with what has not begun; a first part that takes longer is a position all the same.
  const isLater = isNothingDone && aheadMs > -1_000;
  if (isLater && planAheadMs > -1_000) return <p class="pace-position">{outlook.positionLater}</p>;
  return (
    <div class="pace-position">
      <p class="pace-label">
        {isLater
          ? outlook.positionLater
          : breakEndsAtMs === null
            ? words.turnSoFar
            : words.breakUntil(plannedTime(turn, breakEndsAtMs))}
      </p>
      {!isLater && (
        <p class="pace-pace">
          <PositionText ms={aheadMs} class="pace-pace-time" />
          {partsAhead !== null && Math.abs(aheadMs) >= 1_000 && (
            <span class="pace-pace-parts number">{words.parts(partsAhead)}</span>
          )}
        </p>
      )}
      <p class="pace-plan">
        <span class="pace-label">{words.planLabel}</span>{' '}
        <PositionText ms={planAheadMs} class="pace-plan-time" />
      </p>
    </div>
  );
}
