import { describe, expect, it } from 'vitest';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import type { PartInHand, TurnFact } from '../../../src/domain/records/turn-fact';
import type { DayBreak, ShiftCalendar } from '../../../src/domain/shop/shift-calendar';
import { shiftPlan } from '../../../src/domain/shop/shift-plan';
import { taktOfDay } from '../../../src/domain/shop/takt-of-day';
import { attendedDayMs } from '../../../src/domain/weeks/attended-day';
import { MORNING_MS } from '../../support/records';
import { turnOf } from './turn-of-day';

const DAY = '2026-03-02';
/** Meeting, rest, meal, rest and close-down of the demo's shift, minutes since seven. */
const between = [
  [0, 5],
  [120, 130],
  [240, 270],
  [390, 400],
  [475, 480],
] as const;

function calendar(counted: Pick<DayBreak, 'isAttended'>): ShiftCalendar {
  const breaks = between.map(([from, to]) => ({ fromMin: 420 + from, toMin: 420 + to, ...counted }));
  return {
    shifts: [{ name: '', weekdays: [1], fromMin: 420, toMin: 900, breaks }],
    exceptions: [],
  };
}

/** Seven to three with a tap on every takt of the working time, and a stop in every break. */
function dayOnTakt(shop: ShiftCalendar, taktMs: number) {
  const part: PartInHand = { part: 'p-m', partCode: 'M', targetMs: taktMs, targetSource: 'takt' };
  const happened: [number, TurnFact][] = [];
  let sequence = 1;
  const add = (atS: number, fact: TurnFact) => {
    happened.push([atS, fact]);
    sequence += 1;
  };
  for (const [place, [fromMin, toMin]] of between.entries()) {
    add(fromMin * 60, { kind: 'stopped' });
    add(fromMin * 60, {
      kind: 'stoppage-explained',
      stoppage: `t:${sequence}`,
      category: 'planned-break',
      reason: 'break',
      label: '',
    });
    add(toMin * 60, { kind: 'resumed' });
    const untilMin = between[place + 1]?.[0] ?? toMin;
    for (let atS = toMin * 60 + taktMs / 1_000; atS <= untilMin * 60; atS += taktMs / 1_000) {
      add(atS, { kind: 'part-done', ...part });
    }
  }
  add(480 * 60, { kind: 'turn-ended' });
  const turn = turnOf(happened, { first: part });
  const breaks = shiftPlan(shop, turn.startedAt).breaks.map(({ fromWallMs, toWallMs, ...counted }) => ({
    ...counted,
    fromMs: fromWallMs - MORNING_MS,
    toMs: toWallMs - MORNING_MS,
  }));
  return summariseDay(DAY, [{ turn, absorbedMs: new Map(), breaks }], null);
}

describe('a day just on takt', () => {
  it('has an efficiency of 100 % where the shop counts no rest as attended', () => {
    const shop = calendar({ isAttended: false });
    const takt = taktOfDay(shop, 252, DAY);
    if (!takt.ok) throw new Error(takt.fault);
    const day = dayOnTakt(shop, takt.taktMs);
    expect([day.good, day.attendedMs / 60_000]).toEqual([252, 420]);
    expect(dayFigures(day).efficiency).toBeCloseTo(1, 9);
    // Promises reckon with the same day.
    expect(attendedDayMs(shop, DAY)).toBe(day.attendedMs);
    expect(takt.attendedMin * 60_000).toBe(day.attendedMs);
  });

  it('has the efficiency that Shop says beforehand where rests count as attended: 420 of 450 minutes', () => {
    const shop = calendar({});
    const takt = taktOfDay(shop, 252, DAY);
    if (!takt.ok) throw new Error(takt.fault);
    const day = dayOnTakt(shop, takt.taktMs);
    expect(dayFigures(day).efficiency).toBeCloseTo(takt.netMin / takt.attendedMin, 9);
    expect(dayFigures(day).efficiency).toBeCloseTo(420 / 450, 9);
    expect(attendedDayMs(shop, DAY)).toBe(day.attendedMs);
    expect(takt.attendedMin * 60_000).toBe(day.attendedMs);
  });
});
