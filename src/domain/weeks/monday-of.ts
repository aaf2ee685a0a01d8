import { dayAfter } from './attended-day';

/**
 * The Monday of a day's week, by which a week is named.
 *
 * @example
 * mondayOf('2026-03-01') // => '2026-02-23'
 */
export function mondayOf(day: string): string {
  return dayAfter(day, -((new Date(`${day}T12:00:00Z`).getUTCDay() + 6) % 7));
}
