import { describe, expect, it } from 'vitest';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { dailyCapacity, daysKept } from '../../../src/domain/weeks/daily-capacity';
import { ordinaryDays } from '../../../src/domain/weeks/ordinary-days';
import { peopleNeeded } from '../../../src/domain/weeks/people-needed';
import { isOverhauled, quoteTime } from '../../../src/domain/weeks/quote-time';
import { shop, weeks3And4 } from '../../demo/demo-shop';
import { summariesOf } from '../../demo/demo-summaries';

const days = summariesOf(weeks3And4);
const good = (of: typeof days) => of.map((day) => day.good);

describe('what the demo shop can promise', () => {
  // The days: the independent simulation of the same shop.
  it('is 238 a day on nine of ten ordinary days, where the mean of the seven is 261', () => {
    const ordinary = ordinaryDays(days);
    // Without the two hard days and the easy one.
    expect(good(ordinary)).toEqual([240, 266, 262, 277, 254, 280, 247]);
    const capacity = dailyCapacity(good(ordinary), 0.9)!;
    // By hand: t(0.9; 6) = 1.440 in every table of Student's t, and 260.86 − 1.440 × 14.94 × √(8/7) = 237.9.
    expect([capacity.mean, capacity.promise].map(Math.round)).toEqual([261, 238]);
    expect(capacity.t).toBeCloseTo(1.44, 3);
  });

  it('is less from few days than from many of the same mean and spread', () => {
    const week = [90, 95, 100, 105, 110];
    const many = Array.from({ length: 20 }, () => week).flat();
    expect(dailyCapacity(week, 0.9)!.promise).toBeLessThan(dailyCapacity(many, 0.9)!.promise - 3);
  });

  it('is not 252: that is kept on 6 days of 10', () => {
    expect(daysKept(good(days), 252)).toBe(6);
  });

  it('is not told from four days, and never is less than nothing', () => {
    expect(dailyCapacity([200, 210, 220, 230], 0.9)).toBeNull();
    expect(dailyCapacity([0, 0, 0, 0, 500], 0.99)!.promise).toBe(0);
  });
});

describe('the people needed', () => {
  it('are the load over what one person gets done, before rounding', () => {
    // 252 parts of 1.616 min in 450 attended minutes at 96.9 %: 407.2 / 436.05.
    expect(peopleNeeded([{ quantity: 252, standardMs: 96_960 }], 450 * 60_000, 0.969)).toBeCloseTo(0.9339, 4);
  });

  it('are asked for with an efficiency that somebody can have', () => {
    expect(() => peopleNeeded([], 1, 0)).toThrow('requires an attended time and an efficiency above zero');
  });
});

describe('a quotation', () => {
  const efficiencies = days.map((day) => dayFigures(day).efficiency!);
  const order = { quantity: 500, standardMs: 90_804, setUpMs: 136_800 };

  it('is the standard over the shop’s own efficiency, between a fast course and a slow one', () => {
    const { standardMs, totalMs, lowMs, highMs } = quoteTime(order, efficiencies, 450 * 60_000);
    expect(standardMs).toBe(136_800 + 500 * 90_804);
    expect(totalMs / standardMs).toBeCloseTo(1 / 0.96945, 4);
    expect([lowMs! < totalMs, totalMs < highMs!]).toEqual([true, true]);
  });

  it('of a long order is surer, in percent, than one of a day', () => {
    const width = (quantity: number) => {
      const { lowMs, highMs, totalMs } = quoteTime({ ...order, quantity }, efficiencies, 450 * 60_000);
      return (highMs! - lowMs!) / totalMs;
    };
    expect(width(5_000)).toBeLessThan(width(200));
    // Within a day there is nothing to average over.
    expect(width(50)).toBeCloseTo(width(100), 9);
  });

  it('for a size is as unsure as its standard data too', () => {
    const width = (standardHalfMs: number) => {
      const { lowMs, highMs, totalMs } = quoteTime({ ...order, standardHalfMs }, efficiencies, 450 * 60_000);
      return (highMs! - lowMs!) / totalMs;
    };
    const [none, some] = [width(0), width(9_000)];
    // 9 s of 90.8 s are a tenth; both sources together are more than either, and less than their sum.
    expect(some).toBeGreaterThan(none);
    expect(some).toBeGreaterThan(0.198);
    expect(some).toBeLessThan(none + 0.21);
  });

  it('from four days is the standard alone, with no interval', () => {
    expect(quoteTime(order, efficiencies.slice(0, 4), 1)).toMatchObject({
      lowMs: null,
      highMs: null,
      days: 4,
    });
    expect(quoteTime(order, efficiencies.slice(0, 4), 1).totalMs).toBe(136_800 + 500 * 90_804);
  });

  it('is overhauled when the standard or the method behind it was changed', () => {
    const part = shop.parts.find(({ code }) => code === 'M')!;
    const quotation = {
      part: part.id,
      partCode: 'M',
      quantity: 500,
      setUpMs: 0,
      perPartMs: part.targetMs!,
      totalMs: 1,
      lowMs: null,
      highMs: null,
      methodRevision: 1,
      study: part.targetStudy,
      note: '',
    };
    expect(isOverhauled(quotation, part)).toBe(false);
    expect(isOverhauled(quotation, { ...part, targetMs: 90_000 })).toBe(true);
    expect(
      isOverhauled(quotation, { ...part, methods: [...part.methods, { ...part.methods[0]!, revision: 2 }] }),
    ).toBe(true);
    expect(isOverhauled(quotation, undefined)).toBe(true);
    expect(isOverhauled({ ...quotation, part: '' }, undefined)).toBe(false);
  });
});
