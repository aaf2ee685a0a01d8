import { describe, expect, it } from 'vitest';
import { netTimeOfDay } from '../../../src/domain/shop/net-time-of-day';
import type { DayStretch, ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { taktOfDay } from '../../../src/domain/shop/takt-of-day';

const at = (hours: number, minutes = 0) => 60 * hours + minutes;
const from = (fromMin: number, toMin: number): DayStretch => ({ fromMin, toMin });
const weekdays = [1, 2, 3, 4, 5];
function calendar(breaks: DayStretch[], shift = from(at(7), at(15))): ShiftCalendar {
  return { shifts: [{ name: '', weekdays, ...shift, breaks }], exceptions: [] };
}
/** The shop of the demo: lunch, two breaks, a meeting and a close-down of five minutes each. */
const demo = calendar([
  from(at(7), at(7, 5)),
  from(at(9), at(9, 10)),
  from(at(11), at(11, 30)),
  from(at(13, 30), at(13, 40)),
  from(at(14, 55), at(15)),
]);
const thursday = '2026-11-26';
const saturday = '2026-11-28';

describe('takt', () => {
  it('is 100.0 s in the demo: 420 minutes of work for 252 parts', () => {
    expect(netTimeOfDay(demo, thursday)).toBe(420);
    expect(taktOfDay(demo, 252, thursday)).toEqual({
      ok: true,
      taktMs: 100_000,
      netMin: 420,
      attendedMin: 450,
      day: thursday,
    });
  });

  it('is that of the next working day when it is asked on a day off', () => {
    expect(taktOfDay(demo, 252, saturday)).toMatchObject({ day: '2026-11-30' });
  });

  it('takes breaks that overlap out once', () => {
    const overlapping = calendar([
      from(at(9), at(9, 30)),
      from(at(9, 20), at(9, 40)),
      from(at(9), at(9, 10)),
    ]);
    expect(netTimeOfDay(overlapping, thursday)).toBe(480 - 40);
  });

  it('knows a shift past midnight and its break there', () => {
    expect(netTimeOfDay(calendar([from(at(1), at(1, 30))], from(at(22), at(6))), thursday)).toBe(480 - 30);
  });

  it('counts shifts that run at once as one time', () => {
    const two: ShiftCalendar = {
      shifts: [
        { name: 'a', weekdays, ...from(at(6), at(14)), breaks: [] },
        { name: 'b', weekdays, ...from(at(10), at(18)), breaks: [] },
      ],
      exceptions: [],
    };
    expect(netTimeOfDay(two, thursday)).toBe(720);
  });

  it.each([0, -5, 2.5, Number.NaN])('is none for a demand of %d', (demand) => {
    expect(taktOfDay(demo, demand, thursday)).toEqual({ ok: false, fault: 'no-demand' });
  });

  it('is none for an absurd demand, without a calendar, and without a shift', () => {
    expect(taktOfDay(demo, 99_999_999, thursday)).toEqual({ ok: false, fault: 'absurd' });
    expect(taktOfDay(null, 252, thursday)).toEqual({ ok: false, fault: 'no-calendar' });
    const closed: ShiftCalendar = { shifts: [], exceptions: [] };
    expect(taktOfDay(closed, 252, thursday)).toEqual({ ok: false, fault: 'no-shift' });
  });
});
