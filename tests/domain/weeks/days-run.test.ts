import { describe, expect, it } from 'vitest';
import { daysRun } from '../../../src/domain/weeks/days-run';
import { seededRandom } from '../../../src/statistics/seeded-random';
import { weeks3And4 } from '../../demo/demo-shop';
import { summariesOf } from '../../demo/demo-summaries';

/** Days of any length from 1 January on. */
const days = (values: readonly number[], from = 0) =>
  values.map((value, place) => ({
    day: new Date(Date.UTC(2026, 0, 1 + from + place)).toISOString().slice(0, 10),
    value,
  }));
const wave = (count: number) => Array.from({ length: count }, (_, place) => 100 + (place % 3));

describe('a run of daily figures', () => {
  it('has no limits before ten days, provisional ones from ten, firm ones from twenty', () => {
    const of = (count: number) => daysRun(days(wave(count)), [])[0]!;
    expect([of(1), of(9)].map(({ limits }) => limits)).toEqual([null, null]);
    expect([of(10), of(19), of(20), of(30)].map(({ standing }) => standing)).toEqual([
      'provisional',
      'provisional',
      'firm',
      'firm',
    ]);
  });

  it('freezes its limits at twenty days: whatever comes later moves none of them', () => {
    const at20 = daysRun(days(wave(20)), [])[0]!;
    const later = daysRun(days([...wave(20), 300, 1, 300]), [])[0]!;
    expect(later.limits).toEqual(at20.limits);
    expect(later.baseline).toBe(20);
    expect(later.points.slice(20).map(({ signals }) => signals.length > 0)).toEqual([true, true, true]);
  });

  it('begins anew where the work was changed, also when no day was worked on that very day', () => {
    const values = days([...wave(12), ...wave(12).map((value) => value - 50)]);
    const stretches = daysRun(values, ['2026-01-13']);
    expect(stretches.map(({ points }) => points.length)).toEqual([12, 12]);
    expect(stretches.flatMap(({ points }) => points.flatMap(({ signals }) => signals))).toEqual([]);
    const sunday = daysRun([...values.slice(0, 12), ...values.slice(14)], ['2026-01-14']);
    expect(sunday.map(({ points }) => points.length)).toEqual([12, 10]);
  });

  it('takes the days in order of time, whatever order they come in', () => {
    const values = days(wave(15));
    expect(daysRun([...values].reverse(), [])).toEqual(daysRun(values, []));
  });

  it('knows how far each day lies from the one before, within its stretch, and how far is too far', () => {
    const [before, after] = daysRun(days([1, 4, 2, ...wave(10)]), ['2026-01-04']);
    expect(before!.steps.map(({ value }) => value)).toEqual([3, 2]);
    expect(after!.steps[0]).toEqual({ day: '2026-01-05', value: 1 });
    // D4 of two is 3.26653: the printed factor 3.267 of NIST and others, with all its digits.
    expect(after!.limits!.movingRangeUpper / after!.limits!.meanMovingRange).toBeCloseTo(3.26653, 5);
  });

  it('is empty without days', () => {
    expect(daysRun([], ['2026-01-01'])).toEqual([]);
  });

  it('signals a planted shift of 15 % within eight days in at least 80 % of 200 seeded runs', () => {
    const random = seededRandom(20_260_302);
    const averages = summariesOf(weeks3And4).map(({ parts }) => {
      const { netMs, counted } = parts.find(({ partCode }) => partCode === 'M')!;
      return netMs / counted;
    });
    const draw = () => averages[Math.floor(random() * averages.length)]!;
    const run = (shift: number) => {
      const values = Array.from({ length: 28 }, (_, place) => draw() * (place < 20 ? 1 : shift));
      const [stretch] = daysRun(days(values), []);
      return stretch!.points.slice(20).some(({ signals }) => signals.length > 0);
    };
    const share = (shift: number) =>
      Array.from({ length: 200 }, () => run(shift)).filter(Boolean).length / 200;
    expect(share(1.15)).toBeGreaterThanOrEqual(0.8);
    expect(share(1)).toBeLessThan(0.15);
  });
});
