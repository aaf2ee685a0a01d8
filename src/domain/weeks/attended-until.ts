import type { DayMinute } from '../day/day-minute';
import type { ShiftCalendar } from '../shop/shift-calendar';
import { attendedDayMs, dayAfter } from './attended-day';
import { MOST_DAYS } from './finish-day';

/**
 * What the people on an order attend by the calendar from the day on which it can begin to the end of another day,
 * milliseconds. No day before today gives anything, and today only what is left of its shift.
 *
 * @param until the last day that counts
 * @returns 0 when nobody works in between; null when no day is told, or it is further off than anybody promises
 * @example
 * // one person, eight hours from Monday to Friday, from a Friday to the Monday after it
 * const span = { freeFrom: '2026-03-06', until: '2026-03-09', people: 1 };
 * attendedUntilMs(null, span, { day: '2026-03-05', minute: 900 }) // => 57_600_000
 */
export function attendedUntilMs(
  calendar: ShiftCalendar | null,
  { freeFrom, until, people }: { freeFrom: string; until: string; people: number },
  now: DayMinute,
): number | null {
  if (!(people > 0) || freeFrom === '' || until === '') return null;
  const first = freeFrom > now.day ? freeFrom : now.day;
  let sumMs = 0;
  let day = first;
  for (let ahead = 0; day <= until; ahead += 1) {
    if (ahead === MOST_DAYS) return null;
    sumMs += people * attendedDayMs(calendar, day, day === now.day ? now.minute : 0);
    day = dayAfter(day, 1);
  }
  return sumMs;
}
