const MINUTE_MS = 60_000;
const DAY_MIN = 1_440;

/**
 * The moment at which a wall clock in a time zone shows a minute of a day, milliseconds since
 * 1970-01-01T00:00:00Z.
 *
 * A time that is skipped when clocks go forward is the moment that comes as long after the change as the clock
 * would have been past it; one that occurs twice when they go back is the first of the two. The rules of the zone
 * are those of the time zone database that the browser carries.
 *
 * @param day as 2026-03-29
 * @param minute since midnight; from 1,440 on it is on the following days
 * @param zone IANA name
 * @throws {RangeError} Invalid time zone specified: …
 *
 * @example
 * wallTime('2026-03-02', 420, 'Europe/Berlin') // => 1772431200000
 */
export function wallTime(day: string, minute: number, zone: string): number {
  const asUtcMs = Date.parse(`${day}T00:00:00Z`) + minute * MINUTE_MS;
  // A day away on either side no change of clocks is nearer than the one that matters.
  const before = offsetMin(asUtcMs - DAY_MIN * MINUTE_MS, zone);
  const after = offsetMin(asUtcMs + DAY_MIN * MINUTE_MS, zone);
  const early = asUtcMs - before * MINUTE_MS;
  const late = asUtcMs - after * MINUTE_MS;
  if (offsetMin(early, zone) === before) return early;
  return offsetMin(late, zone) === after ? late : early;
}

/** Minutes to add to UTC for the wall clock of a zone at a moment. */
export function offsetMin(wallMs: number, zone: string): number {
  const shown = new Map(
    formatOf(zone)
      .formatToParts(wallMs)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const part = (name: Intl.DateTimeFormatPartTypes) => shown.get(name) ?? 0;
  const localMs = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
  return Math.round(localMs / MINUTE_MS) - Math.floor(wallMs / MINUTE_MS);
}

/** Whether the rules of a zone are known here. */
export function isZone(zone: string): boolean {
  try {
    formatOf(zone);
    return true;
  } catch {
    return false;
  }
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Making a format costs a hundred times what using it does. */
function formatOf(timeZone: string): Intl.DateTimeFormat {
  const made =
    formats.get(timeZone) ??
    new Intl.DateTimeFormat('en-u-ca-iso8601', {
      timeZone,
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      hourCycle: 'h23',
    });
  formats.set(timeZone, made);
  return made;
}
