import { describe, expect, it } from 'vitest';
import type { ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { attendedDayMs, usualDayMs } from '../../../src/domain/weeks/attended-day';
import { finishDay } from '../../../src/domain/weeks/finish-day';

const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;

/** Six to two with a meal of 30 min and a rest of 15; from Monday to Friday, a late shift of four hours too. */
const calendar: ShiftCalendar = {
  shifts: [
    {
      name: 'early',
      weekdays: [1, 2, 3, 4, 5],
      fromMin: 360,
      toMin: 840,
      breaks: [
        { fromMin: 480, toMin: 495 },
        { fromMin: 600, toMin: 630 },
      ],
    },
    { name: 'late', weekdays: [1, 2, 3, 4, 5], fromMin: 840, toMin: 1_080, breaks: [] },
  ],
  exceptions: [{ day: '2026-03-10', shifts: [] }],
};

describe('what one person attends on a day', () => {
  it('is the longest shift without its meal; a rest is attended', () => {
    expect(attendedDayMs(calendar, '2026-03-09')).toBe(450 * MINUTE_MS);
    expect(attendedDayMs(calendar, '2026-03-08')).toBe(0);
    expect(attendedDayMs(calendar, '2026-03-10')).toBe(0);
  });

  it('counts a shift over midnight once', () => {
    const night = {
      ...calendar.shifts[0]!,
      fromMin: 1_320,
      toMin: 360,
      breaks: [{ fromMin: 90, toMin: 120 }],
    };
    expect(attendedDayMs({ shifts: [night], exceptions: [] }, '2026-03-09')).toBe(450 * MINUTE_MS);
  });

  it('is eight hours on weekdays where no calendar is kept', () => {
    expect([attendedDayMs(null, '2026-03-06'), attendedDayMs(null, '2026-03-07')]).toEqual([8 * HOUR_MS, 0]);
    expect(usualDayMs(null, '2026-03-07')).toBe(8 * HOUR_MS);
  });
});

describe('the day on which an order is done', () => {
  const done = (freeFrom: string, people: number, minutes: number) =>
    finishDay(calendar, { freeFrom, people, neededMs: minutes * MINUTE_MS });

  it('is its first day when it fits, and the next when a minute is over', () => {
    expect(done('2026-03-05', 1, 450)).toBe('2026-03-05');
    expect(done('2026-03-05', 1, 451)).toBe('2026-03-06');
  });

  it('leaps over the weekend and over a day on which the shop is closed', () => {
    // Friday, then Monday; Tuesday is closed, so the third day is Wednesday.
    expect(done('2026-03-06', 1, 900)).toBe('2026-03-09');
    expect(done('2026-03-06', 1, 901)).toBe('2026-03-11');
    expect(done('2026-03-07', 1, 1)).toBe('2026-03-09');
  });

  it('comes sooner with more people', () => {
    expect(done('2026-03-06', 2, 900)).toBe('2026-03-06');
  });

  it('is not told with nobody on it, from no day, and of a shop that never works', () => {
    expect(done('2026-03-06', 0, 10)).toBeNull();
    expect(done('soon', 1, 10)).toBeNull();
    expect(
      finishDay({ shifts: [], exceptions: [] }, { freeFrom: '2026-03-06', people: 1, neededMs: 1 }),
    ).toBeNull();
  });
});
