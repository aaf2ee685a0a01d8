import { localDay } from '../day/local-day';
import type { Stamp } from '../records/stamp';
import { shiftAt } from './shift-at';
import type { ShiftCalendar, ShiftTimes } from './shift-calendar';

/**
 * The day that a moment counts for: that of the shift in which it lies, so that a night shift is one day, and the
 * calendar day of the wall clock outside of all shifts or without a calendar.
 */
export function shopDay(
  calendar: ShiftCalendar | null,
  moment: Pick<Stamp, 'wallMs' | 'zone' | 'offsetMin'>,
): string {
  if (!calendar || !touchesMidnight(calendar)) return localDay(moment);
  return shiftAt(calendar, moment)?.day ?? localDay(moment);
}

/** Only a shift that passes midnight, or to which people come before it, can have moments of another day. */
function touchesMidnight({ shifts, exceptions }: ShiftCalendar): boolean {
  const isAcross = ({ fromMin, toMin }: ShiftTimes) => toMin <= fromMin || fromMin < 60;
  return shifts.some(isAcross) || exceptions.some((each) => each.shifts.some(isAcross));
}
