import type {
  DayBreak,
  DayException,
  DayStretch,
  ShiftCalendar,
  ShiftTimes,
  WeeklyShift,
} from '../domain/shop/shift-calendar';
import { exactly, type Fields, listOf, numberThat, optional, type Shape, text, truth } from './backup-shape';

const minute = numberThat((value) => Number.isInteger(value) && value >= 0 && value < 1_440);
const weekday = numberThat((value) => Number.isInteger(value) && value >= 1 && value <= 7);
/** A day that no calendar has would end in no time at all. */
const day: Shape = (value) =>
  typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value) && !Number.isNaN(Date.parse(value))
    ? null
    : '';
const stretch: Fields<DayStretch> = { fromMin: minute, toMin: minute };
const times: Fields<ShiftTimes> = {
  ...stretch,
  breaks: listOf(exactly<DayBreak>({ ...stretch, isAttended: optional(truth) })),
};

/** What a shift calendar of a backup must hold. */
export const calendarShape = exactly<ShiftCalendar>({
  shifts: listOf(exactly<WeeklyShift>({ name: text, weekdays: listOf(weekday), ...times })),
  exceptions: listOf(exactly<DayException>({ day, shifts: listOf(exactly<ShiftTimes>(times)) })),
});
