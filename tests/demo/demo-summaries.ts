import { workBlocks } from '../../src/demo/shift-plan';
import { absorbedTime } from '../../src/domain/day/absorbed-time';
import type { BreakStretch } from '../../src/domain/day/attended-spans';
import { localDay } from '../../src/domain/day/local-day';
import { type DaySummary, summariseDay, type TurnToSummarise } from '../../src/domain/day/summarise-day';
import type { Turn } from '../../src/domain/turn/turn';
import { type Days, records, turnsOf } from './demo-shop';

const MINUTE_MS = 60_000;
/** Standard minutes of a set-up: 2.0 and 14 %. */
export const SET_UP_STANDARD_MS = 2.28 * MINUTE_MS;

const absorbedMs = absorbedTime(records);

/** What lies between the blocks of work, from 07:00 to 15:00. */
export function shiftBreaks({ startedAt }: Turn): BreakStretch[] {
  const shiftMs = Date.parse(`${localDay(startedAt)}T07:00:00Z`) - startedAt.wallMs;
  const ends = [0, ...workBlocks.map(({ to }) => to)];
  const begins = [...workBlocks.map(({ from }) => from), 480];
  return ends.map((from, place) => ({
    fromMs: shiftMs + from * MINUTE_MS,
    toMs: shiftMs + begins[place]! * MINUTE_MS,
  }));
}

export const turnsToSummarise = (span: Days): TurnToSummarise[] =>
  turnsOf(span).map((turn) => ({ turn, absorbedMs, breaks: shiftBreaks(turn) }));

/** Days of the demo shop, from 1, oldest first. */
export function summariesOf({ from, to }: Days): DaySummary[] {
  return Array.from({ length: to - from + 1 }, (_, place) => {
    const turns = turnsToSummarise({ from: from + place, to: from + place });
    return summariseDay(localDay(turns[0]!.turn.startedAt), turns, SET_UP_STANDARD_MS);
  });
}
