import type { DayReview } from '../../domain/day/review-day';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import { readTurnStarts } from './read-turn-starts';
import { reviewTurns } from './review-turns';

const DAY_MS = 86_400_000;

/** One day; null when no turn began on it, or when the text is no day at all. */
export async function readDay(bench: Bench, day: string): Promise<DayReview | null> {
  const middayMs = Date.parse(`${day}T12:00:00Z`);
  if (!/^\d{4}-\d\d-\d\d$/.test(day) || Number.isNaN(middayMs)) return null;
  const range = { fromWallMs: middayMs - 1.5 * DAY_MS, toWallMs: middayMs + 1.5 * DAY_MS };
  const starts = (await readTurnStarts(bench, range)).filter(({ stamp }) => dayOf(bench, stamp) === day);
  const [review] = await reviewTurns(bench, starts);
  return review ?? null;
}
