/**
 * Minutes since midnight as the clock shows them, 24 hours.
 *
 * @example
 * clockOfMinute(555) // => '09:15'
 */
export function clockOfMinute(minute: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;
}

/**
 * A time of the day as a field gives it, in minutes since midnight; null for anything else.
 *
 * @example
 * minuteOfClock('09:15') // => 555
 */
export function minuteOfClock(text: string): number | null {
  const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)(?::[0-5]\d)?$/.exec(text) ?? [];
  return hours === undefined ? null : Number(hours) * 60 + Number(minutes);
}
