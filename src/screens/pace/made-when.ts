import { localDay } from '../../domain/day/local-day';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { formatDay } from '../../i18n/format-day';
import { timeOfDay } from './time-of-day';

/** When a part was done, with its day and whose it is where these are not the turn's own. */
export function madeWhen({ startedAt, person }: Turn, { doneAt, person: by }: Cycle): string {
  const day = localDay(doneAt);
  const words = [
    day < localDay(startedAt) && formatDay(day, 'short'),
    timeOfDay(doneAt),
    by !== person && by,
  ];
  return words.filter(Boolean).join(' · ');
}
