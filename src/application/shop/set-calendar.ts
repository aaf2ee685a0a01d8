import { SHOP_STREAM } from '../../domain/records/log-record';
import type { DayStretch, ShiftCalendar, ShiftTimes } from '../../domain/shop/shift-calendar';
import type { Bench } from '../bench';
import { planShift } from '../turn/plan-shift';

/** More than this is no shift calendar but a slip. */
export const MOST_SHIFTS = 6;
export const MOST_BREAKS = 6;
const DAY_MIN = 1_440;

/**
 * Sets when the shop works. It is a default: what is tapped goes before it. A turn keeps the breaks that were
 * planned when it began, so a new calendar changes nothing that is past; the turn that runs gets the new ones.
 *
 * @throws {RangeError} setCalendar requires times of the day in whole minutes
 * @throws {RangeError} setCalendar requires weekdays from 1 to 7 for every shift, each once
 * @throws {RangeError} setCalendar requires breaks that lie in their shift and one after the other
 * @throws {RangeError} setCalendar requires each exception to be for a day of its own
 * @throws {RangeError} setCalendar requires at most six shifts, with six breaks each
 */
export function setCalendar(bench: Bench, calendar: ShiftCalendar): void {
  const { shifts, exceptions } = calendar;
  const all: ShiftTimes[] = [...shifts, ...exceptions.flatMap((exception) => exception.shifts)];
  if (shifts.length > MOST_SHIFTS || all.some(({ breaks }) => breaks.length > MOST_BREAKS)) {
    throw new RangeError('setCalendar requires at most six shifts, with six breaks each');
  }
  if (!all.every((shift) => [shift, ...shift.breaks].every(isOfDay))) {
    throw new RangeError('setCalendar requires times of the day in whole minutes');
  }
  const areWeekdays = (days: readonly number[]) =>
    days.length > 0 && new Set(days).size === days.length && days.every((day) => /^[1-7]$/.test(String(day)));
  if (!shifts.every(({ weekdays }) => areWeekdays(weekdays))) {
    throw new RangeError('setCalendar requires weekdays from 1 to 7 for every shift, each once');
  }
  if (!all.every(areBreaksInside)) {
    throw new RangeError('setCalendar requires breaks that lie in their shift and one after the other');
  }
  const days = exceptions.map(({ day }) => day);
  if (new Set(days).size < days.length || !days.every(isDay)) {
    throw new RangeError('setCalendar requires each exception to be for a day of its own');
  }
  bench.record(SHOP_STREAM, [{ kind: 'calendar-set', calendar }]);
  planShift(bench);
}

/** Whether the breaks of a shift lie in it and do not overlap. */
export function areBreaksInside(shift: ShiftTimes): boolean {
  return faultyBreak(shift) === null;
}

/**
 * The first break that is not inside its shift, or lies over another one, by its place among them from 0; null when
 * none does. One whose end comes before its beginning would last until the next day, and is outside.
 */
export function faultyBreak({ fromMin, toMin, breaks }: ShiftTimes): {
  readonly place: number;
  readonly over: number | null;
} | null {
  const inOrder = breaks
    .map((each, place) => {
      const atMin = (each.fromMin - fromMin + DAY_MIN) % DAY_MIN;
      return { place, atMin, endMin: atMin + lengthOf(each) };
    })
    .sort((a, b) => a.atMin - b.atMin);
  const outside = inOrder.find(({ endMin }) => endMin > lengthOf({ fromMin, toMin }));
  if (outside) return { place: outside.place, over: null };
  const at = inOrder.findIndex(({ atMin }, index) => index > 0 && atMin < inOrder[index - 1]!.endMin);
  return at < 0 ? null : { place: inOrder[at]!.place, over: inOrder[at - 1]!.place };
}

function lengthOf({ fromMin, toMin }: DayStretch): number {
  return toMin > fromMin ? toMin - fromMin : toMin - fromMin + DAY_MIN;
}

function isOfDay({ fromMin, toMin }: DayStretch): boolean {
  return [fromMin, toMin].every((minute) => Number.isInteger(minute) && minute >= 0 && minute < DAY_MIN);
}

function isDay(day: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(day) && new Date(`${day}T00:00:00Z`).toJSON()?.slice(0, 10) === day;
}
