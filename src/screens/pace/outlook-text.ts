import type { Stamp } from '../../domain/records/stamp';
import { finishAtTarget } from '../../domain/turn/finish-at-target';
import { goodSoFar } from '../../domain/turn/good-so-far';
import { isTooEarly, type Projection } from '../../domain/turn/project-finish';
import type { Turn } from '../../domain/turn/turn';
import { outlook as words } from '../../i18n/en/outlook';
import { plannedTime } from './time-of-day';

/** Where the turn is heading, in one line. Before anything can be foretold, when it would end at target. */
export function outlookText(turn: Turn, found: Projection | null, now: Stamp): string {
  const { wantedParts, planned } = turn;
  const clock = (ms: number) => plannedTime(turn, ms);
  if (turn.isLearning) return words.learning;
  if (wantedParts !== null && goodSoFar(turn) >= wantedParts) return words.allDone(wantedParts);
  if (!found) {
    const atTargetMs = finishAtTarget(turn, now);
    if (atTargetMs !== null) return words.atTarget(clock(atTargetMs));
    const isAsked = wantedParts === null && (planned.endsAtMs ?? 0) <= turn.lastAtMs;
    return isAsked || !isTooEarly(turn) ? words.ask : words.notYet;
  }
  const { finishMs, partsByEnd } = found;
  const { endsAtMs } = planned;
  // Whoever works on after the shift has an end of work all the same.
  if (finishMs && (!partsByEnd || finishMs.p90 <= endsAtMs!))
    return words.finish(clock(finishMs.p50), clock(finishMs.p10), clock(finishMs.p90));
  if (!partsByEnd || endsAtMs === null) return words.ask;
  const [about, from, to] = [partsByEnd.p50, partsByEnd.p10, partsByEnd.p90].map(Math.round) as [
    number,
    number,
    number,
  ];
  const end = clock(endsAtMs);
  return wantedParts === null
    ? words.byEnd(end, about, from, to)
    : words.byEndOf(end, about, from, to, wantedParts);
}
