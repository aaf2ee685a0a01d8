import { getISOWeek, getISOWeekYear } from 'date-fns';

/**
 * The week of a day after ISO 8601: weeks begin on Monday, and the first of a year is that of its first Thursday.
 *
 * @param day as 2026-03-27
 * @example
 * isoWeek('2027-01-03') // => '2026-W53'
 */
export function isoWeek(day: string): string {
  // The library counts in the machine's zone: there, noon is on the same day in all of them.
  const noon = new Date(`${day}T12:00`);
  return `${getISOWeekYear(noon)}-W${String(getISOWeek(noon)).padStart(2, '0')}`;
}
