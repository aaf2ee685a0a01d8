import { locale } from './spoken';

const formats = new Map<string, Intl.DateTimeFormat>();

/** A calendar day such as 2026-03-27 in words. `long`: Fri 27 March 2026; `short`: 27 Mar. */
export function formatDay(day: string, style: 'long' | 'short' = 'long'): string {
  const options: Intl.DateTimeFormatOptions =
    style === 'long'
      ? { weekday: 'short', day: 'numeric', month: 'long', year: 'numeric' }
      : { day: 'numeric', month: 'short' };
  return format(style, options).format(Date.parse(day)).replaceAll(',', '');
}

/** Month of a day and its number in it, for the foot of a chart. */
export function dayParts(day: string): { month: string; dayOfMonth: string } {
  const month = format('month', { month: 'long', year: 'numeric' }).format(Date.parse(day));
  return { month, dayOfMonth: String(Number(day.slice(8, 10))) };
}

/** The day is a calendar day already, so it is read and written in UTC: no zone can move it. */
function format(name: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = locale + name;
  const known = formats.get(key) ?? new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
  formats.set(key, known);
  return known;
}
