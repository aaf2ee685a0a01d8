import type { DayMinute } from '../day/day-minute';
import type { ShiftCalendar } from '../shop/shift-calendar';
import { attendedDayMs, dayAfter } from './attended-day';

/** Nobody promises further ahead. */
export const MOST_DAYS = 1_000;

/**
 * The day on which an order is done: from the day on which it can begin, each working day takes what the people on it
 * attend by the calendar, until nothing is left. A promise by attended time and calendar; other orders are not in it.
 * No day before today takes anything, and today only what is left of its shift.
 *
 * @param now the day and the minute of it at which the promise is made
 * @param neededMs attended time of the order, all people together, milliseconds
 * @returns a day such as 2026-03-02; null when nobody works on it, or it would take longer than 1,000 days
 * @example
 * // 960 minutes, one person, eight hours from Monday to Friday, begun on a Friday
 * const order = { freeFrom: '2026-03-06', people: 1, neededMs: 57_600_000 };
 * finishDay(null, order, { day: '2026-03-05', minute: 900 }) // => '2026-03-09'
 */
export function finishDay(
  calendar: ShiftCalendar | null,
  { freeFrom, people, neededMs }: { freeFrom: string; people: number; neededMs: number },
  now: DayMinute,
): string | null {
  const isPossible = people > 0 && Number.isFinite(people * neededMs) && isDay(freeFrom);
  if (!isPossible) return null;
  const first = freeFrom > now.day ? freeFrom : now.day;
  let leftMs = neededMs;
  for (let ahead = 0; ahead < MOST_DAYS; ahead += 1) {
    const day = dayAfter(first, ahead);
    const madeMs = people * attendedDayMs(calendar, day, day === now.day ? now.minute : 0);
    leftMs -= madeMs;
    // Less than a millisecond is left by rounding, and by no part.
    if (madeMs > 0 && leftMs < 1) return day;
  }
  return null;
}

function isDay(text: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text));
}
