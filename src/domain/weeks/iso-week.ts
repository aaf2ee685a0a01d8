const DAY_MS = 86_400_000;

/**
 * The week of a day after ISO 8601: weeks begin on Monday, and the first of a year is that of its first Thursday.
 *
 * @param day as 2026-03-27
 * @example
 * isoWeek('2027-01-03') // => '2026-W53'
 */
export function isoWeek(day: string): string {
  const ms = Date.parse(day);
  const weekday = new Date(ms).getUTCDay() || 7;
  const thursday = new Date(ms + (4 - weekday) * DAY_MS);
  const year = thursday.getUTCFullYear();
  const week = 1 + Math.floor((thursday.getTime() - Date.UTC(year, 0, 1)) / (7 * DAY_MS));
  return `${year}-W${String(week).padStart(2, '0')}`;
}
