import { taktTime } from '../../statistics/takt-time';
import { attendedTimeOfDay, netTimeOfDay } from './net-time-of-day';
import type { ShiftCalendar } from './shift-calendar';
import { LONGEST_TARGET_MS, SHORTEST_TARGET_MS } from './target-limits';

/** Takt with what it comes from, or why there is none. */
export type Takt =
  | {
      readonly ok: true;
      readonly taktMs: number;
      readonly netMin: number;
      /** With the rests in it that the shop counts as attended: a day just on takt has the efficiency net ÷ this. */
      readonly attendedMin: number;
      readonly day: string;
    }
  | { readonly ok: false; readonly fault: 'no-calendar' | 'no-shift' | 'no-demand' | 'absurd' };

const DAY_MS = 86_400_000;
const DAYS_AHEAD = 14;
const MIN_MS = 60_000;

/**
 * How much time calendar and demand leave for a part, on the next day with a shift. None where anything is missing:
 * a takt is never invented.
 *
 * Formula: takt = net working time of the day / parts wanted in it
 *   net  every break is out, also a rest that counts as attended: nobody makes parts in it, and with it in the takt the
 *        wanted parts would not be made
 *
 * @param demand as somebody typed it: anything but a whole number above 0 is no demand
 * @param today as 2026-03-09
 */
export function taktOfDay(calendar: ShiftCalendar | null, demand: number, today: string): Takt {
  if (!calendar) return { ok: false, fault: 'no-calendar' };
  const noon = Date.parse(`${today}T12:00:00Z`);
  const day = Array.from({ length: DAYS_AHEAD }, (_, away) =>
    new Date(noon + away * DAY_MS).toISOString().slice(0, 10),
  ).find((each) => netTimeOfDay(calendar, each) > 0);
  if (day === undefined) return { ok: false, fault: 'no-shift' };
  if (!(Number.isInteger(demand) && demand > 0)) return { ok: false, fault: 'no-demand' };
  const netMin = netTimeOfDay(calendar, day);
  const taktMs = taktTime(netMin * MIN_MS, demand);
  if (taktMs < SHORTEST_TARGET_MS || taktMs > LONGEST_TARGET_MS) return { ok: false, fault: 'absurd' };
  return { ok: true, taktMs, netMin, attendedMin: attendedTimeOfDay(calendar, day), day };
}
