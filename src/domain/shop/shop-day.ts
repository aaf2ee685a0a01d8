import { localDay } from '../day/local-day';
import type { Stamp } from '../records/stamp';
import { shiftAt } from './shift-at';
import type { ShiftCalendar } from './shift-calendar';

/**
 * The day that a moment counts for: that of the shift in which it lies, so that a night shift is one day, and the
 * calendar day of the wall clock outside of all shifts or without a calendar.
 */
export function shopDay(
  calendar: ShiftCalendar | null,
  moment: Pick<Stamp, 'wallMs' | 'zone' | 'offsetMin'>,
): string {
  return (calendar && shiftAt(calendar, moment)?.day) ?? localDay(moment);
}
