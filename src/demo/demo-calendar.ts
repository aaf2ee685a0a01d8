import type { ShiftCalendar } from '../domain/shop/shift-calendar';
import { SHIFT_END, workBlocks } from './shift-plan';

/** 07:00, in minutes after midnight. */
const SHIFT_FROM_MIN = 420;

/** What lies between the blocks of work: the meeting, the breaks, lunch, and sweeping up. */
const between = [0, ...workBlocks.map(({ to }) => to)].map((from, place) => ({
  fromMin: SHIFT_FROM_MIN + from,
  toMin: SHIFT_FROM_MIN + (workBlocks[place]?.from ?? SHIFT_END),
}));

/** Monday to Friday, 07:00 to 15:00. */
export const demoCalendar: ShiftCalendar = {
  shifts: [
    {
      name: 'Day shift',
      weekdays: [1, 2, 3, 4, 5],
      fromMin: SHIFT_FROM_MIN,
      toMin: SHIFT_FROM_MIN + SHIFT_END,
      breaks: between,
    },
  ],
  exceptions: [],
};
