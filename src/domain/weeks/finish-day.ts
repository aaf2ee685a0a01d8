import type { ShiftCalendar } from '../shop/shift-calendar';
import { attendedDayMs, dayAfter } from './attended-day';

/** Nobody promises further ahead. */
const MOST_DAYS = 1_000;

/**
 * The day on which an order is done: from the day on which it can begin, each working day takes what the people on it
 * attend by the calendar, until nothing is left. A promise by attended time and calendar; other orders are not in it.
 *
 * @param neededMs attended time of the order, all people together, milliseconds
 * @returns a day such as 2026-03-02; null when nobody works on it, or it would take longer than 1,000 days
 * @example
 * // 960 minutes, one person, eight hours from Monday to Friday, begun on a Friday
 * finishDay(null, { freeFrom: '2026-03-06', people: 1, neededMs: 57_600_000 }) // => '2026-03-09'
 */
export function finishDay(
  calendar: ShiftCalendar | null,
  { freeFrom, people, neededMs }: { freeFrom: string; people: number; neededMs: number },
): string | null {
  const isPossible = people > 0 && Number.isFinite(people * neededMs) && isDay(freeFrom);
  if (!isPossible) return null;
  let leftMs = neededMs;
  for (let ahead = 0; ahead < MOST_DAYS; ahead += 1) {
    const day = dayAfter(freeFrom, ahead);
    const madeMs = people * attendedDayMs(calendar, day);
    leftMs -= madeMs;
    // Less than a millisecond is left by rounding, and by no part.
    if (madeMs > 0 && leftMs < 1) return day;
  }
  return null;
}

function isDay(text: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text));
}
