import { describe, expect, it } from 'vitest';
import { clusteredBootstrap } from '../../src/statistics/clustered-bootstrap';
import { seededRandom } from '../../src/statistics/seeded-random';
import { welchComparison } from '../../src/statistics/welch-comparison';
import { badFractions, saysRule } from './bad-readings';

/** Minutes and good parts of invented days: five before a change, ten after it. */
const before = [430, 445, 450, 441, 452].map((total, i) => ({ total, count: [150, 158, 149, 162, 155][i]! }));
const after = [450, 448, 451, 440, 449, 452, 446, 450, 447, 443].map((total, i) => ({
  total,
  count: [262, 270, 255, 240, 266, 258, 281, 263, 251, 259][i]!,
}));

describe('clusteredBootstrap', () => {
  it('estimates with ratios of sums, so that a long day weighs more', () => {
    const answer = clusteredBootstrap(before, after, { random: seededRandom(1) });
    // 4476 minutes over 2605 parts less 2218 over 774.
    expect(answer.estimate).toBeCloseTo(4476 / 2605 - 2218 / 774, 12);
    expect(answer.clusters).toEqual([5, 10]);
    expect(answer.lower).toBeLessThan(answer.estimate);
    expect(answer.upper).toBeGreaterThan(answer.estimate);
  });

  it('gives the same interval for the same seed and another for another', () => {
    const run = (seed: number) => clusteredBootstrap(before, after, { random: seededRandom(seed) });
    expect(run(42)).toEqual(run(42));
    expect(run(43)).not.toEqual(run(42));
  });

  it('gives a ratio that no unit changes', () => {
    const inUnit = (factor: number) =>
      clusteredBootstrap(
        before.map(({ total, count }) => ({ total: total * factor, count })),
        after.map(({ total, count }) => ({ total: total * factor, count })),
        { random: seededRandom(5), statistic: 'ratio' },
      );
    expect(inUnit(64).lower).toBeCloseTo(inUnit(1).lower, 12);
    expect(inUnit(64).estimate).toBeCloseTo(4476 / 2605 / (2218 / 774), 12);
  });

  it('is wider than an interval that takes every part for an independent reading', () => {
    // Days of 50 parts that share their day's level: 10 days before, 10 after, all from one seed.
    const random = seededRandom(2718);
    const bell = () => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    const day = () => {
      const level = 1.4 + 0.08 * bell();
      return Array.from({ length: 50 }, () => level + 0.08 * bell());
    };
    const days = [Array.from({ length: 10 }, day), Array.from({ length: 10 }, day)];
    const totals = days.map((side) =>
      side.map((parts) => ({ total: parts.reduce((sum, part) => sum + part, 0), count: parts.length })),
    );
    const byDay = clusteredBootstrap(totals[0]!, totals[1]!, { random: seededRandom(3) });
    const byPart = welchComparison(days[1]!.flat(), days[0]!.flat());
    expect(byDay.upper - byDay.lower).toBeGreaterThan(3 * (byPart.upper - byPart.lower));
  });

  it('agrees with the standard error of Welch by days within a quarter, when days weigh alike', () => {
    const singles = (x: number[]) => x.map((total) => ({ total, count: 1 }));
    const a = [5.1, 4.8, 5.4, 5, 5.2, 4.7, 5.3, 5.1, 4.9, 5, 5.2, 4.8];
    const b = [4.2, 4.5, 4.1, 4.4, 4.3, 4.6, 4.2, 4.3, 4.5, 4.1, 4.4, 4.3];
    const boot = clusteredBootstrap(singles(a), singles(b), { random: seededRandom(9) });
    const ratio = boot.standardError / welchComparison(b, a).standardError;
    expect(ratio).toBeGreaterThan(0.75);
    expect(ratio).toBeLessThan(1.1);
  });

  it('spans 2 × 1.96 standard errors for many days alike, as an interval of 95 % must', () => {
    const random = seededRandom(11);
    const side = () => Array.from({ length: 60 }, () => ({ total: 4 + random(), count: 1 }));
    const { lower, upper, standardError } = clusteredBootstrap(side(), side(), { random, resamples: 20_000 });
    expect(Math.abs((upper - lower) / standardError / 3.92 - 1)).toBeLessThan(0.04);
  });

  it.each([
    ['no day before', [], after],
    ['one day before', before.slice(0, 1), after],
    ['one day after', before, after.slice(0, 1)],
    ['a day without parts', [...before, { total: 10, count: 0 }], after],
    ['a day of NaN minutes', [...before, { total: Number.NaN, count: 5 }], after],
    ['a day of 1e308 minutes', before, [...after, { total: 1e308, count: 5 }]],
    ['a day of Infinity parts', before, [...after, { total: 1, count: Number.POSITIVE_INFINITY }]],
  ])('refuses %s', (_, left, right) => {
    expect(() => clusteredBootstrap(left, right, { random: seededRandom(1) })).toThrow(
      saysRule('clusteredBootstrap'),
    );
  });

  it('refuses a ratio to a day of zero minutes', () => {
    const idle = [...before, { total: 0, count: 5 }];
    const options = { random: seededRandom(1), statistic: 'ratio' as const };
    expect(() => clusteredBootstrap(idle, after, options)).toThrow(saysRule('clusteredBootstrap'));
  });

  it.each([0, 99, 1e7, 200.5, Number.NaN])('refuses %s resamples', (resamples) => {
    const options = { random: seededRandom(1), resamples };
    expect(() => clusteredBootstrap(before, after, options)).toThrow(saysRule('clusteredBootstrap'));
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    const options = { random: seededRandom(1), confidence };
    expect(() => clusteredBootstrap(before, after, options)).toThrow(saysRule('clusteredBootstrap'));
  });
});
