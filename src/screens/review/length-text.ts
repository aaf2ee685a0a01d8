import { review as words } from '../../i18n/en/review';
import { clockFace } from '../../i18n/format-duration';

/** A length of time in words, in whole minutes; below ten with its seconds, because 0:31 is no minute. */
export function lengthText(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  return ms < 600_000 ? words.hours(0, clockFace(ms)) : words.hours(Math.floor(minutes / 60), minutes % 60);
}
