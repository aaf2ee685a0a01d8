import { isGood } from '../../domain/turn/earned-time';
import { isTooEarly, type Projection } from '../../domain/turn/project-finish';
import type { Turn } from '../../domain/turn/turn';
import { outlook as words } from '../../i18n/en/outlook';
import { plannedTime } from './time-of-day';

/** Where the turn is heading, in one line. */
export function outlookText(turn: Turn, found: Projection | null): string {
  const { wantedParts, planned, cycles } = turn;
  const clock = (ms: number) => plannedTime(turn, ms);
  if (turn.isLearning) return words.learning;
  if (wantedParts !== null && cycles.filter(isGood).length >= wantedParts) return words.allDone(wantedParts);
  if (!found) {
    const isAsked = wantedParts === null && planned.endsAtMs === null;
    return isAsked || !isTooEarly(turn) ? words.ask : words.notYet;
  }
  const { finishMs, partsByEnd } = found;
  const isInShift = planned.endsAtMs === null || (finishMs !== null && finishMs.p90 <= planned.endsAtMs);
  if (finishMs && isInShift)
    return words.finish(clock(finishMs.p50), clock(finishMs.p10), clock(finishMs.p90));
  if (!partsByEnd || planned.endsAtMs === null) return words.ask;
  const [about, from, to] = [partsByEnd.p50, partsByEnd.p10, partsByEnd.p90].map(Math.round) as [
    number,
    number,
    number,
  ];
  const end = clock(planned.endsAtMs);
  return wantedParts === null
    ? words.byEnd(end, about, from, to)
    : words.byEndOf(end, about, from, to, wantedParts);
}
