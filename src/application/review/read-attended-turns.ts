import { attendedSpans } from '../../domain/day/attended-spans';
import type { AttendedTurn } from '../../domain/day/summarise-day';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import { readTurnStarts } from './read-turn-starts';
import { readTurnToSummarise } from './read-turn-to-summarise';

const DAY_MS = 86_400_000;

/** The turns that began on a day of the shop, oldest first, each with its attended time. */
export async function readAttendedTurns(bench: Bench, day: string): Promise<AttendedTurn[]> {
  const dawnMs = Date.parse(day);
  const range = { fromWallMs: dawnMs - DAY_MS, toWallMs: dawnMs + 2 * DAY_MS };
  const starts = (await readTurnStarts(bench, range)).filter(({ stamp }) => dayOf(bench, stamp) === day);
  return Promise.all(
    starts.map(async ({ id }) => {
      const of = await readTurnToSummarise(bench, id);
      return { ...of, spans: attendedSpans(of.turn, of.breaks) };
    }),
  );
}
