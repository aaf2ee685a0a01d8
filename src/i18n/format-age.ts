import { locale } from './spoken';

const units = [
  ['day', 86_400_000],
  ['hour', 3_600_000],
  ['minute', 60_000],
] as const;

/**
 * How long ago something was, in its largest whole unit; less than a minute is now.
 *
 * @example
 * formatAge(3 * 86_400_000) // => '3 days ago'
 */
export function formatAge(ms: number): string {
  const [unit, length] = units.find((each) => ms >= each[1]) ?? ['second', Number.POSITIVE_INFINITY];
  // A day ago is not “yesterday”: only now has a word of its own.
  const format = new Intl.RelativeTimeFormat(locale, { numeric: unit === 'second' ? 'auto' : 'always' });
  return format.format(-Math.floor(ms / length), unit);
}
