import { localDay } from '../day/local-day';
import type { Stamp } from '../records/stamp';
import {
  type DayBreak,
  type DayStretch,
  type ShiftCalendar,
  type ShiftTimes,
  shiftsOn,
  type WallBreak,
  type WallStretch,
} from './shift-calendar';
import { isZone, wallTime } from './wall-time';

/** A shift on the day on which it begins. */
export interface ShiftOfDay extends WallStretch {
  /** The calendar day that it counts for, also where it ends on the next. */
  readonly day: string;
  readonly breaks: readonly WallBreak[];
}

/** A turn may begin this long before its shift does. */
const EARLY_MS = 3_600_000;
const DAY_MS = 86_400_000;
const DAY_MIN = 1_440;

type Moment = Pick<Stamp, 'wallMs' | 'zone' | 'offsetMin'>;

/**
 * The shift to which a moment belongs: of those that have not ended, and have begun or begin within the hour, the
 * one whose beginning is nearest. Null outside of all of them.
 */
export function shiftAt(calendar: ShiftCalendar, moment: Moment): ShiftOfDay | null {
  const { wallMs } = moment;
  const near = shiftsAround(calendar, moment).filter(
    ({ fromWallMs, toWallMs }) => fromWallMs - EARLY_MS <= wallMs && wallMs < toWallMs,
  );
  const off = ({ fromWallMs }: ShiftOfDay) => Math.abs(wallMs - fromWallMs);
  return near.sort((a, b) => off(a) - off(b))[0] ?? null;
}

/** The shifts of the day before a moment, of its own day and of the day after, in order of time. */
export function shiftsAround(calendar: ShiftCalendar, moment: Moment): ShiftOfDay[] {
  // A record of another browser may name a zone that this one does not know.
  if (!isZone(moment.zone)) return [];
  return [-1, 0, 1].flatMap((away) => {
    const day = localDay({ wallMs: moment.wallMs + away * DAY_MS, offsetMin: moment.offsetMin });
    return shiftsOfDay(calendar, day, moment.zone);
  });
}

/** A zone's rules are dear to ask, and a year of turns asks about the same days again and again. */
const known = new WeakMap<ShiftCalendar, Map<string, ShiftOfDay[]>>();

function shiftsOfDay(calendar: ShiftCalendar, day: string, zone: string): ShiftOfDay[] {
  const days = known.get(calendar) ?? new Map<string, ShiftOfDay[]>();
  known.set(calendar, days);
  const name = `${day} ${zone}`;
  const shifts = days.get(name) ?? shiftsOn(calendar, day).map((times) => onWallClock(day, times, zone));
  days.set(name, shifts);
  return shifts;
}

function onWallClock(day: string, shift: ShiftTimes, zone: string): ShiftOfDay {
  const stretch = ({ fromMin, toMin }: DayStretch): WallStretch => {
    // What is earlier in the day than the shift begins comes after midnight.
    const from = fromMin < shift.fromMin ? fromMin + DAY_MIN : fromMin;
    const to = toMin <= fromMin ? toMin + DAY_MIN : toMin;
    return {
      fromWallMs: wallTime(day, from, zone),
      toWallMs: wallTime(day, to + from - fromMin, zone),
    };
  };
  const own = stretch(shift);
  const onClock = ({ fromMin, toMin, ...counted }: DayBreak): WallBreak => ({
    ...stretch({ fromMin, toMin }),
    ...counted,
  });
  const breaks = shift.breaks
    .map(onClock)
    .filter(({ fromWallMs, toWallMs }) => fromWallMs >= own.fromWallMs && toWallMs <= own.toWallMs)
    .sort((a, b) => a.fromWallMs - b.fromWallMs);
  return { day, ...own, breaks };
}
