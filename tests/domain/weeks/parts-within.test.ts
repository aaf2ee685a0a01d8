import { describe, expect, it } from 'vitest';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { attendedUntilMs } from '../../../src/domain/weeks/attended-until';
import { finishDay } from '../../../src/domain/weeks/finish-day';
import { partsWithin } from '../../../src/domain/weeks/parts-within';
import { quoteTime } from '../../../src/domain/weeks/quote-time';
import { shop, weeks3And4 } from '../../demo/demo-shop';
import { summariesOf } from '../../demo/demo-summaries';

const HOUR_MS = 3_600_000;
const DAY_MS = 7.5 * HOUR_MS;
const efficiencies = summariesOf(weeks3And4).map((day) => dayFigures(day).efficiency!);
const order = { standardMs: 90_804, setUpMs: 136_800 };

/** A Sunday evening before everything here. */
const before = { day: '2026-03-01', minute: 1_200 };

describe('the time that is attended until a day', () => {
  const until = (day: string, people = 1, now = before) =>
    attendedUntilMs(null, { freeFrom: '2026-03-06', until: day, people }, now);

  it('counts both days, the working days between them, and everybody on it', () => {
    expect(['2026-03-06', '2026-03-08', '2026-03-09'].map((day) => until(day)! / HOUR_MS)).toEqual([
      8, 8, 16,
    ]);
    expect(until('2026-03-09', 2.5)! / HOUR_MS).toBe(40);
  });

  it('is none before the order is free, and none of a day that is over or of today without a calendar', () => {
    expect(until('2026-03-05')).toBe(0);
    expect(until('2026-03-10', 1, { day: '2026-03-09', minute: 600 })! / HOUR_MS).toBe(8);
  });

  it('is of today what is left of its shift', () => {
    const now = { day: '2026-03-27', minute: 16 * 60 };
    const span = { freeFrom: '2026-03-01', until: '2026-03-27', people: 1 };
    const minutes = attendedUntilMs(shop.calendar, span, now)! / 60_000;
    expect(minutes).toBeLessThan(attendedUntilMs(shop.calendar, span, { ...now, minute: 0 })! / 60_000);
  });

  it('is not told with nobody on it, without a day, and for a day further off than anybody promises', () => {
    expect(until('2026-03-09', 0)).toBeNull();
    expect(until('')).toBeNull();
    expect(until('2036-03-09')).toBeNull();
  });
});

describe('the parts that can be made by a day', () => {
  it('are what the attended time brings at the shop’s own efficiency, set-up out', () => {
    const { parts } = partsWithin(order, efficiencies, DAY_MS, 37.5 * HOUR_MS);
    const mean = efficiencies.reduce((sum, each) => sum + each, 0) / efficiencies.length;
    expect(parts).toBe(Math.floor((37.5 * HOUR_MS * mean - 136_800) / 90_804));
  });

  it('lie between a slow course and a fast one, by the range that a quotation of as many has', () => {
    const attendedMs = 37.5 * HOUR_MS;
    const { parts, low, high } = partsWithin(order, efficiencies, DAY_MS, attendedMs);
    const slow = (quantity: number) => quoteTime({ ...order, quantity }, efficiencies, DAY_MS).highMs!;
    const fast = (quantity: number) => quoteTime({ ...order, quantity }, efficiencies, DAY_MS).lowMs!;
    expect([low! < parts, parts < high!]).toEqual([true, true]);
    expect([slow(low!) <= attendedMs, slow(low! + 1) > attendedMs]).toEqual([true, true]);
    expect([fast(high!) <= attendedMs, fast(high! + 1) > attendedMs]).toEqual([true, true]);
  });

  it('are quoted for that very day, and one more for a later', () => {
    const { calendar } = shop;
    const [freeFrom, until, people] = ['2026-03-06', '2026-03-12', 2];
    const attendedMs = attendedUntilMs(calendar, { freeFrom, until, people }, before)!;
    const { parts, low } = partsWithin(order, efficiencies, DAY_MS, attendedMs);
    const doneOn = (quantity: number, which: 'totalMs' | 'highMs') =>
      finishDay(
        calendar,
        {
          freeFrom,
          people,
          neededMs: quoteTime({ ...order, quantity }, efficiencies, DAY_MS)[which]!,
        },
        before,
      );
    expect([doneOn(parts, 'totalMs'), doneOn(parts + 1, 'totalMs')! > until]).toEqual([until, true]);
    expect([doneOn(low!, 'highMs'), doneOn(low! + 1, 'highMs')! > until]).toEqual([until, true]);
  });

  it('are at target pace with no range below five days, and none where the set-up alone takes it all', () => {
    expect(partsWithin({ standardMs: 60_000, setUpMs: 0 }, [], DAY_MS, HOUR_MS)).toEqual({
      parts: 60,
      low: null,
      high: null,
    });
    expect(partsWithin({ standardMs: 60_000, setUpMs: HOUR_MS }, [], DAY_MS, HOUR_MS).parts).toBe(0);
  });
});
