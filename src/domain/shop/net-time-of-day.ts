import { isMeal } from './is-meal';
import { type DayBreak, type DayStretch, type ShiftCalendar, shiftsOn } from './shift-calendar';

const DAY_MIN = 1_440;
const MINUTE_MS = 60_000;

/**
 * Working time of a day by the calendar, minutes: its shifts without their breaks. Breaks that overlap are taken out
 * once; shifts that run at the same time are one time, because takt is asked of the day and not of people. A shift
 * counts for the day on which it begins. 0 on a day without a shift.
 */
export function netTimeOfDay(calendar: ShiftCalendar, day: string): number {
  return timeWithout(calendar, day, () => true);
}

/** The same with the rests in it that the shop counts as attended: what efficiency is reckoned over. */
export function attendedTimeOfDay(calendar: ShiftCalendar, day: string): number {
  return timeWithout(calendar, day, (each) => isMeal(each, lengthMin(each) * MINUTE_MS));
}

function timeWithout(calendar: ShiftCalendar, day: string, isOut: (each: DayBreak) => boolean): number {
  const isWorked = new Uint8Array(2 * DAY_MIN);
  for (const shift of shiftsOn(calendar, day)) {
    const own = new Uint8Array(2 * DAY_MIN);
    const mark = (stretch: DayStretch, value: 0 | 1) => {
      const from = stretch.fromMin < shift.fromMin ? stretch.fromMin + DAY_MIN : stretch.fromMin;
      own.fill(value, from, from + lengthMin(stretch));
    };
    mark(shift, 1);
    for (const each of shift.breaks) if (isOut(each)) mark(each, 0);
    for (const [minute, value] of own.entries()) isWorked[minute]! |= value;
  }
  return isWorked.reduce((sum, minute) => sum + minute, 0);
}

function lengthMin({ fromMin, toMin }: DayStretch): number {
  return toMin <= fromMin ? toMin - fromMin + DAY_MIN : toMin - fromMin;
}
