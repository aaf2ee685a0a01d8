const TYPED = /^(\d{1,2})(?:[:.]?(\d{2})(?:[:.]?(\d{2}))?)?$/;

/**
 * A time of day as it is typed, by the clock of twenty-four hours: 7, 7:05, 7.05, 705, 0705 or 7:05:30.
 *
 * @returns 07:05 or 07:05:30; null for what is no time of day
 */
export function parseClockTime(typed: string): string | null {
  const [, hours, minutes = '00', seconds] = TYPED.exec(typed.trim()) ?? [];
  if (hours === undefined || Number(hours) > 23 || Number(minutes) > 59 || Number(seconds ?? 0) > 59)
    return null;
  const clock = `${hours.padStart(2, '0')}:${minutes}`;
  return seconds === undefined ? clock : `${clock}:${seconds}`;
}
