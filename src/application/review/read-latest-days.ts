import { localDay } from '../../domain/day/local-day';
import type { DayReview } from '../../domain/day/review-day';
import type { Bench } from '../bench';
import { reviewTurns } from './read-days';
import { readTurnStarts, type TurnStart } from './read-turn-starts';

const DAY_MS = 86_400_000;
/** A local day reaches up to 14 hours either way from that of UTC: a whole day more is read, then filtered. */
const MARGIN_MS = DAY_MS;

export interface LatestDays {
  /** Newest first. */
  readonly days: readonly DayReview[];
  /** Turns began before these days too. */
  readonly hasOlder: boolean;
}

/**
 * The newest four weeks of days with turns, or the four weeks before a given day. The weeks are counted back
 * from the newest day that has a turn, so a shop that stood still for a month is not an empty picture.
 */
export async function readLatestDays(bench: Bench, before?: string, weeks = 4): Promise<LatestDays> {
  const newest = before === undefined ? await newestStart(bench) : (await startsBefore(bench, before)).at(-1);
  if (!newest) return { days: [], hasOlder: false };

  const newestDay = localDay(newest.stamp);
  const firstMs = Date.parse(newestDay) - (weeks * 7 - 1) * DAY_MS;
  const firstDay = new Date(firstMs).toISOString().slice(0, 10);
  const range = { fromWallMs: firstMs - MARGIN_MS, toWallMs: newest.stamp.wallMs + MARGIN_MS };
  const starts = (await readTurnStarts(bench, range)).filter(({ stamp }) => {
    const day = localDay(stamp);
    return day >= firstDay && day <= newestDay;
  });
  return {
    days: await reviewTurns(bench, starts),
    hasOlder: (await startsBefore(bench, firstDay)).length > 0,
  };
}

async function newestStart(bench: Bench): Promise<TurnStart | undefined> {
  const [saved] = await bench.log.readLatestStarts('turn', 1);
  const from = saved ? saved.stamp.wallMs : 0;
  return (await readTurnStarts(bench, { fromWallMs: from, toWallMs: Number.MAX_SAFE_INTEGER })).at(-1);
}

async function startsBefore(bench: Bench, day: string): Promise<TurnStart[]> {
  const range = { fromWallMs: 0, toWallMs: Date.parse(day) + MARGIN_MS };
  return (await readTurnStarts(bench, range)).filter(({ stamp }) => localDay(stamp) < day);
}
