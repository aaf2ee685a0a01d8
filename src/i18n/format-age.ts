const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

/**
 * How long ago something was, in its largest whole unit.
 *
 * @example
 * formatAge(3 * 86_400_000) // => '3 days ago'
 */
export function formatAge(ms: number): string {
  const said = (count: number, unit: string) => `${count} ${unit}${count === 1 ? '' : 's'} ago`;
  if (ms >= DAY_MS) return said(Math.floor(ms / DAY_MS), 'day');
  if (ms >= HOUR_MS) return said(Math.floor(ms / HOUR_MS), 'hour');
  if (ms >= MINUTE_MS) return said(Math.floor(ms / MINUTE_MS), 'minute');
  return 'just now';
}
