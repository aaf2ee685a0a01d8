import type { Stamp } from '../records/stamp';
import { localDay } from './local-day';

/** A moment of the shop's own clock: a day such as 2026-03-02, and whole minutes since its midnight. */
export interface DayMinute {
  readonly day: string;
  readonly minute: number;
}

export function dayMinute(stamp: Pick<Stamp, 'wallMs' | 'offsetMin'>): DayMinute {
  const day = localDay(stamp);
  const sinceMidnightMs = stamp.wallMs + stamp.offsetMin * 60_000 - Date.parse(day);
  return { day, minute: Math.floor(sinceMidnightMs / 60_000) };
}
