import { describe, expect, it } from 'vitest';
import { absorbedTime } from '../../src/domain/day/absorbed-time';
import type { Fact, LogRecord } from '../../src/domain/records/log-record';
import { shiftPlan } from '../../src/domain/shop/shift-plan';
import { cleanCycles } from '../../src/domain/turn/clean-cycles';
import { isGood } from '../../src/domain/turn/earned-time';
import { foldTurn } from '../../src/domain/turn/fold-turn';
import { pace } from '../../src/domain/turn/pace';
import { paceState } from '../../src/domain/turn/pace-state';
import { projectFinish } from '../../src/domain/turn/project-finish';
import type { Turn } from '../../src/domain/turn/turn';
import { minutes, records, shop, sum, turns, turnsOf, weeks3And4 } from './demo-shop';

const HOUR_MIN = 60;
/** 11:00, the middle of the shift, from 07:00. */
const HALF_SHIFT_MS = 240 * 60_000;
/** 11:30, when the afternoon's turn begins. */
const AFTERNOON_MS = 270 * 60_000;

/** A turn as it stood at a moment, with the calendar's plan and the parts that were to come out of it. */
function asItStood(turn: Turn, untilMs: number, wanted: number): Turn {
  const own = records.filter(({ stream }) => stream === turn.id);
  const first = own[0]!;
  const so = own.filter(
    ({ stamp, fact }) => stamp.monoMs - first.stamp.monoMs <= untilMs && fact.kind !== 'turn-ended',
  );
  const add = (record: LogRecord, fact: Fact): LogRecord => ({ ...record, fact });
  return foldTurn([
    first,
    add(first, { kind: 'shift-planned', ...shiftPlan(shop.calendar!, first.stamp) }),
    ...so.slice(1),
    add(so.at(-1)!, { kind: 'parts-wanted', parts: wanted }),
  ]);
}

const good = ({ cycles }: Turn) => cycles.filter(isGood).length;
const lastGoodMs = ({ cycles }: Turn) => cycles.findLast(isGood)!.toMs;
const before = (place: number) => turns.slice(Math.max(0, place - 10), place);

function isInside(turn: Turn, place: number, finishedAtMs: number): boolean {
  const { p10, p90 } = projectFinish(turn, before(place), turn.lastAtMs)!.finishMs!;
  return p10 <= finishedAtMs && finishedAtMs <= p90;
}

describe('the projection in the demo shop', () => {
  it('at half shift has the true finish of the day in its range on 17 days of 20 and more', () => {
    const inside = Array.from({ length: 20 }, (_, day) => {
      const [morning, afternoon] = [turns[2 * day]!, turns[2 * day + 1]!];
      const half = asItStood(morning, HALF_SHIFT_MS, good(morning) + good(afternoon));
      return isInside(half, 2 * day, AFTERNOON_MS + lastGoodMs(afternoon));
    });
    expect(inside.filter(Boolean).length).toBeGreaterThanOrEqual(17);
  });

  it('at half of a turn has its true finish in its range in three turns of four and more, one piece at a time', () => {
    const inside = turns
      .map((turn, place) => isInside(asItStood(turn, turn.lastAtMs / 2, good(turn)), place, lastGoodMs(turn)))
      .slice(10);
    expect(inside.filter(Boolean).length / inside.length).toBeGreaterThanOrEqual(0.75);
  });

  it('is no empty promise: in weeks 3 and 4 its range at half of a turn is less than an hour and a quarter', () => {
    const widths = turnsOf(weeks3And4).map((turn) => {
      const half = asItStood(turn, turn.lastAtMs / 2, good(turn));
      const { p10, p90 } = projectFinish(half, before(turns.indexOf(turn)), half.lastAtMs)!.finishMs!;
      return minutes(p90 - p10);
    });
    expect(Math.max(...widths)).toBeLessThan(75);
  });
});

describe('the pace of the demo’s hard day', () => {
  const [morning, afternoon] = turnsOf({ from: 17, to: 17 });

  it('is what a pencil gives: targets of good parts, less what all parts took', () => {
    for (const turn of [morning!, afternoon!]) {
      const counted = turn.cycles.filter(({ isCounted }) => isCounted);
      const allowed = sum(counted.filter(isGood).map(({ targetMs }) => targetMs!));
      const taken = sum(counted.map(({ netMs }) => netMs));
      expect(pace(turn, turn.lastStamp).aheadMs).toBe(allowed - taken);
    }
  });

  it('turns to “slower” seldom, and back: not with every slow part', () => {
    const states = morning!.cycles.map((_, place) =>
      paceState({ ...morning!, cycles: morning!.cycles.slice(0, place + 1) }),
    );
    const turnsOfState = states.filter((state, place) => place > 0 && state !== states[place - 1]).length;
    const slowParts = cleanCycles(morning!).filter(({ netMs, targetMs }) => netMs > 1.1 * targetMs).length;
    expect(turnsOfState).toBeLessThan(slowParts / 2);
  });
});

describe('parts an hour in the demo', () => {
  it('are 38.3 by sums; the mean of single rates would say more than 42', () => {
    // A part with what it lost to stoppages; what cost no output, because the machine went on, was not lost.
    const absorbed = absorbedTime(records);
    const each = turnsOf(weeks3And4).flatMap(({ cycles, stoppages }) =>
      cycles.map(({ netMs, fromMs, toMs }) => {
        const inside = stoppages.filter(
          (stop) => stop.fromMs >= fromMs && stop.fromMs < toMs && /stoppage|called-away/.test(stop.category),
        );
        return minutes(
          netMs + sum(inside.map((stop) => stop.toMs! - stop.fromMs - (absorbed.get(stop.key) ?? 0))),
        );
      }),
    );
    const bySums = (HOUR_MIN * each.length) / sum(each);
    const byRates = sum(each.map((taken) => HOUR_MIN / taken)) / each.length;
    expect(bySums.toFixed(1)).toBe('38.3');
    expect(byRates).toBeGreaterThan(42);
  });
});
