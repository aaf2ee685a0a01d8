import { type DayStretch, type ShiftCalendar, shiftsOn } from './shift-calendar';

const DAY_MIN = 1_440;

/**
 * Working time of a day by the calendar, minutes: its shifts without their breaks. Breaks that overlap are taken out
 * once; shifts that run at the same time are one time, because takt is asked of the day and not of people. A shift
 * counts for the day on which it begins. 0 on a day without a shift.
 */
export function netTimeOfDay(calendar: ShiftCalendar, day: string): number {
  const isWorked = new Uint8Array(2 * DAY_MIN);
  for (const shift of shiftsOn(calendar, day)) {
    const own = new Uint8Array(2 * DAY_MIN);
    const mark = ({ fromMin, toMin }: DayStretch, value: 0 | 1) => {
      const from = fromMin < shift.fromMin ? fromMin + DAY_MIN : fromMin;
      own.fill(value, from, toMin <= fromMin ? from + toMin - fromMin + DAY_MIN : from + toMin - fromMin);
    };
    mark(shift, 1);
    for (const each of shift.breaks) mark(each, 0);
    for (const [minute, value] of own.entries()) isWorked[minute]! |= value;
  }
  return isWorked.reduce((sum, minute) => sum + minute, 0);
}
