import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { faultyBreak, setCalendar } from '../../../src/application/shop/set-calendar';
import { endShift } from '../../../src/application/turn/end-shift';
import { startTurn } from '../../../src/application/turn/start-turn';
import type { ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

const day = { name: 'day', weekdays: [1, 2, 3, 4, 5], fromMin: 420, toMin: 930, breaks: [] };
const night = { name: 'night', weekdays: [7], fromMin: 1_320, toMin: 360, breaks: [] };
const stretch = (fromMin: number, toMin: number) => ({ fromMin, toMin });
const withBreaks = (shift: typeof day, ...breaks: { fromMin: number; toMin: number }[]): ShiftCalendar => ({
  shifts: [{ ...shift, breaks }],
  exceptions: [],
});

let bench: Bench;
beforeEach(async () => {
  bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
});

describe('setCalendar', () => {
  it('keeps the whole calendar, and a later one replaces it', () => {
    expect(bench.shop.value.calendar).toBeNull();
    const first = withBreaks(day, stretch(540, 555));
    setCalendar(bench, first);
    expect(bench.shop.value.calendar).toEqual(first);
    setCalendar(bench, { shifts: [], exceptions: [{ day: '2026-12-25', shifts: [] }] });
    expect(bench.shop.value.calendar?.shifts).toEqual([]);
  });

  it('takes a break on both sides of midnight in a night shift', () => {
    setCalendar(bench, withBreaks(night, stretch(1_425, 15), stretch(120, 150)));
    expect(bench.shop.value.calendar?.shifts[0]?.breaks).toHaveLength(2);
  });

  it('names the break at fault: the one outside, backwards, or over another; none that touch', () => {
    const fault = (...breaks: [number, number][]) =>
      faultyBreak({ ...day, breaks: breaks.map(([from, to]) => stretch(from, to)) });
    expect(fault([540, 555], [400, 430])).toEqual({ place: 1, over: null });
    expect(fault([555, 540])).toEqual({ place: 0, over: null });
    expect(fault([700, 720], [540, 560], [550, 570])).toEqual({ place: 2, over: 1 });
    expect(fault([540, 555], [555, 570])).toBeNull();
  });

  it('keeps what a break counts as, in the calendar and in the plan of the turn that runs', async () => {
    startTurn(bench, 'K7', { part: 'p', partCode: 'M', targetMs: null });
    const rest = { ...stretch(660, 700), isAttended: true };
    setCalendar(bench, withBreaks(day, rest, stretch(540, 555)));
    expect(bench.shop.value.calendar?.shifts[0]?.breaks[0]).toEqual(rest);
    const marks = bench.turn.value?.planned.breaks.map(({ isAttended }) => isAttended);
    expect(marks).toEqual([undefined, true]);
    endShift(bench, 930);
    expect(bench.turn.value?.planned.breaks.map(({ isAttended }) => isAttended)).toEqual(marks);
  });

  const refusals: [string, ShiftCalendar][] = [
    ['setCalendar requires times of the day in whole minutes', withBreaks({ ...day, toMin: 1_440 })],
    ['setCalendar requires times of the day in whole minutes', withBreaks(day, stretch(540.5, 555))],
    [
      'setCalendar requires weekdays from 1 to 7 for every shift, each once',
      withBreaks({ ...day, weekdays: [] }),
    ],
    [
      'setCalendar requires weekdays from 1 to 7 for every shift, each once',
      withBreaks({ ...day, weekdays: [1, 1] }),
    ],
    [
      'setCalendar requires weekdays from 1 to 7 for every shift, each once',
      withBreaks({ ...day, weekdays: [0] }),
    ],
    [
      'setCalendar requires breaks that lie in their shift and one after the other',
      withBreaks(day, stretch(400, 430)),
    ],
    [
      'setCalendar requires breaks that lie in their shift and one after the other',
      withBreaks(day, stretch(540, 560), stretch(550, 570)),
    ],
    [
      'setCalendar requires breaks that lie in their shift and one after the other',
      withBreaks(night, stretch(720, 735)),
    ],
    [
      'setCalendar requires each exception to be for a day of its own',
      { shifts: [], exceptions: [{ day: '2026-02-30', shifts: [] }] },
    ],
    [
      'setCalendar requires each exception to be for a day of its own',
      {
        shifts: [],
        exceptions: [
          { day: '2026-12-25', shifts: [] },
          { day: '2026-12-25', shifts: [] },
        ],
      },
    ],
    [
      'setCalendar requires at most six shifts, with six breaks each',
      { shifts: Array.from({ length: 7 }, () => day), exceptions: [] },
    ],
  ];
  for (const [words, calendar] of refusals) {
    it(`refuses ${JSON.stringify(calendar).slice(0, 120)}: ${words}, and records nothing`, () => {
      const before = bench.changes.value;
      expect(() => setCalendar(bench, calendar)).toThrow(words);
      expect(bench.changes.value).toBe(before);
    });
  }
});
