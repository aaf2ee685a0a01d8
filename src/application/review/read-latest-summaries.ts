import type { DaySummary } from '../../domain/day/summarise-day';
import type { ReviewBook } from '../../domain/weeks/review-book';
import type { Bench } from '../bench';
import type { SummaryShelf } from '../ports/summary-shelf';
import { dayOf } from './day-of';
import { readNewestDay } from './read-newest-day';
import { readReviewBook } from './read-review-book';
import { readSummaries } from './read-summaries';
import { readTurnStarts } from './read-turn-starts';

const DAY_MS = 86_400_000;

export interface LatestSummaries {
  readonly book: ReviewBook;
  /** Newest first. */
  readonly days: readonly DaySummary[];
  /** Turns began before these days too. */
  readonly hasOlder: boolean;
}

/**
 * The week of the newest day that has a turn, and so many whole weeks before it: a shop that stood still for a month
 * is not an empty picture, and no week is cut in the middle, which a table of weeks would show as a short one.
 *
 * @param told is called with the days that were made anew, and all that are to be
 */
export async function readLatestSummaries(
  bench: Bench,
  shelf: SummaryShelf,
  weeks: number,
  told?: (done: number, of: number) => void,
): Promise<LatestSummaries> {
  const to = await readNewestDay(bench);
  if (to === null) return { book: await readReviewBook(bench), days: [], hasOlder: false };
  const sinceMonday = (new Date(to).getUTCDay() + 6) % 7;
  const fromMs = Date.parse(to) - (sinceMonday + weeks * 7) * DAY_MS;
  const from = new Date(fromMs).toISOString().slice(0, 10);
  const { book, days } = await readSummaries(bench, shelf, { from, to }, told);
  return { book, days: [...days].reverse(), hasOlder: await hasTurnsBefore(bench, from) };
}

/** Looked for near first: in a shop of years nobody reads every turn to know that there is one. */
async function hasTurnsBefore(bench: Bench, day: string): Promise<boolean> {
  const endMs = Math.max(0, Date.parse(day) + DAY_MS);
  for (const backDays of [35, 400, Number.POSITIVE_INFINITY]) {
    const fromWallMs = Math.max(0, endMs - backDays * DAY_MS);
    const starts = await readTurnStarts(bench, { fromWallMs, toWallMs: endMs });
    if (starts.some(({ stamp }) => dayOf(bench, stamp) < day)) return true;
  }
  return false;
}
