import type { TypedClock } from '../../domain/study/study-clock';
import { parseDecimal } from '../../i18n/parse-number';

const DAY_MS = 86_400_000;

/** A clock check as it is typed: two times of day, and minutes with a point or a comma. */
export interface ClockReading {
  readonly started: string;
  readonly finished: string;
  readonly before: string;
  readonly after: string;
}

/** What was read off the shop's clock; null where something is no time. A study may go past midnight. */
export function clockOf({ started, finished, before, after }: ClockReading): TypedClock | null {
  const from = timeOfDay(started);
  const to = timeOfDay(finished);
  const beforeMs = minutes(before);
  const afterMs = minutes(after);
  if (from === null || to === null || beforeMs === null || afterMs === null || from === to) return null;
  return { elapsedMs: to > from ? to - from : to - from + DAY_MS, beforeMs, afterMs };
}

function timeOfDay(typed: string): number | null {
  const found = /^(\d{1,2}):(\d\d)(?::(\d\d))?$/.exec(typed.trim());
  if (!found) return null;
  const [hours, minute, second] = [found[1]!, found[2]!, found[3] ?? '0'].map(Number) as [
    number,
    number,
    number,
  ];
  if (hours > 23 || minute > 59 || second > 59) return null;
  return ((hours * 60 + minute) * 60 + second) * 1_000;
}

/** Nothing typed is no time. */
function minutes(typed: string): number | null {
  if (typed.trim() === '') return 0;
  const read = parseDecimal(typed);
  return read === null ? null : Math.round(read * 60_000);
}
