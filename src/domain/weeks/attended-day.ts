import { isMeal } from '../shop/is-meal';
import { type DayStretch, type ShiftCalendar, shiftsOn } from '../shop/shift-calendar';

const DAY_MIN = 1_440;
const MINUTE_MS = 60_000;
/** Where a shop keeps no calendar: eight hours from Monday to Friday. */
const USUAL_MS = 8 * 3_600_000;
const SATURDAY = 6;

/**
 * The time that one person attends on a day by the calendar, milliseconds: the longest of its shifts without its meal
 * breaks. A person works one shift a day, and rests are attended. 0 on a day without a shift.
 *
 * @param afterMin only what comes after this minute of the day; without a calendar nobody knows what does, and it is 0
 */
export function attendedDayMs(calendar: ShiftCalendar | null, day: string, afterMin = 0): number {
  if (!calendar) return afterMin === 0 && weekday(day) < SATURDAY ? USUAL_MS : 0;
  const lengths = shiftsOn(calendar, day).map((shift) => {
    // What is earlier in the day than the shift begins comes after midnight.
    const leftMs = (stretch: DayStretch) => {
      const fromMin = stretch.fromMin < shift.fromMin ? stretch.fromMin + DAY_MIN : stretch.fromMin;
      return Math.max(0, lengthMs(stretch) - Math.max(0, afterMin - fromMin) * MINUTE_MS);
    };
    const meals = shift.breaks.filter((each) => isMeal(each, lengthMs(each)));
    return leftMs(shift) - meals.reduce((sum, each) => sum + leftMs(each), 0);
  });
  return Math.max(0, ...lengths);
}

/** The longest day that a person has in the week from a day on, milliseconds; 0 when the shop is closed all week. */
export function usualDayMs(calendar: ShiftCalendar | null, from: string): number {
  const week = Array.from({ length: 7 }, (_, ahead) => dayAfter(from, ahead));
  return Math.max(...week.map((day) => attendedDayMs(calendar, day)));
}

/** A calendar day so many days later. */
export function dayAfter(day: string, days: number): string {
  const at = new Date(`${day}T12:00:00Z`);
  at.setUTCDate(at.getUTCDate() + days);
  return at.toISOString().slice(0, 10);
}

function weekday(day: string): number {
  return new Date(`${day}T12:00:00Z`).getUTCDay() || 7;
}

/** An end that is not after its beginning lies on the next day. */
function lengthMs({ fromMin, toMin }: DayStretch): number {
  return (toMin <= fromMin ? toMin + DAY_MIN - fromMin : toMin - fromMin) * MINUTE_MS;
}
