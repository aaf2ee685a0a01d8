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

  it('is without a rest that the shop does not count, and with a meal that it does', () => {
    const [early] = calendar.shifts;
    const counted = (isAttended: boolean) => ({
      shifts: [{ ...early!, breaks: early!.breaks.map((each) => ({ ...each, isAttended })) }],
      exceptions: [],
    });
    expect(attendedDayMs(counted(true), '2026-03-09')).toBe(480 * MINUTE_MS);
    expect(attendedDayMs(counted(false), '2026-03-09')).toBe(435 * MINUTE_MS);
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

  it('is after a minute what is left of a shift, its meal out where it is ahead', () => {
    const left = (minute: number) =>
      attendedDayMs({ ...calendar, shifts: [calendar.shifts[0]!] }, '2026-03-09', minute) / MINUTE_MS;
    expect([left(300), left(420), left(615), left(640), left(839), left(840), left(1_000)]).toEqual([
      450, 390, 210, 200, 1, 0, 0,
    ]);
  });

  it('is eight hours on weekdays where no calendar is kept', () => {
    expect([attendedDayMs(null, '2026-03-06'), attendedDayMs(null, '2026-03-07')]).toEqual([8 * HOUR_MS, 0]);
    expect(usualDayMs(null, '2026-03-07')).toBe(8 * HOUR_MS);
  });
});

/** A Sunday evening before everything here. */
const before = { day: '2026-03-01', minute: 1_200 };

describe('the day on which an order is done', () => {
  const done = (freeFrom: string, people: number, minutes: number) =>
    finishDay(calendar, { freeFrom, people, neededMs: minutes * MINUTE_MS }, before);

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

  it('is not today when less is left of the shift than it needs', () => {
    const at = (minute: number, minutes: number) =>
      finishDay(
        calendar,
        { freeFrom: '2026-03-05', people: 1, neededMs: minutes * MINUTE_MS },
        { day: '2026-03-05', minute },
      );
    // At noon two hours are left of the early shift, and all four of the late one; at half past nine the meal is ahead.
    expect([at(720, 240), at(720, 241)]).toEqual(['2026-03-05', '2026-03-06']);
    expect([at(570, 240), at(570, 241)]).toEqual(['2026-03-05', '2026-03-06']);
    expect(at(1_080, 1)).toBe('2026-03-06');
  });

  it('takes nothing from a day that is over, and nothing of today where no calendar says when it ends', () => {
    const order = { freeFrom: '2026-03-02', people: 1, neededMs: 8 * HOUR_MS };
    expect(finishDay(null, order, { day: '2026-03-05', minute: 480 })).toBe('2026-03-06');
  });

  it('comes sooner with more people', () => {
    expect(done('2026-03-06', 2, 900)).toBe('2026-03-06');
  });

  it('is not told with nobody on it, from no day, and of a shop that never works', () => {
    expect(done('2026-03-06', 0, 10)).toBeNull();
    expect(done('soon', 1, 10)).toBeNull();
    expect(
      finishDay({ shifts: [], exceptions: [] }, { freeFrom: '2026-03-06', people: 1, neededMs: 1 }, before),
    ).toBeNull();
  });
});
