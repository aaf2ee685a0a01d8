import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChartRule, chartSignals } from '../../src/statistics/chart-signals';
import { badReadings, saysRule } from './bad-readings';

const limits = { lower: -3, centre: 0, upper: 3 };
const all: ChartRule[] = [
  'beyond-limits',
  'two-of-three-beyond-two-thirds',
  'four-of-five-beyond-one-third',
  'eight-on-one-side',
];

describe('chartSignals', () => {
  it('signals a value beyond a limit and not one on it', () => {
    expect(chartSignals([0, 3, -3, 3.01], limits)).toEqual([
      { rule: 'beyond-limits', side: 'high', index: 3 },
    ]);
    expect(chartSignals([-3.01], limits)).toEqual([{ rule: 'beyond-limits', side: 'low', index: 0 }]);
  });

  it('signals the eighth value in a row on one side, not the seventh, and not a run through the centre', () => {
    const rule = 'eight-on-one-side';
    expect(chartSignals(new Array(7).fill(0.1), limits)).toEqual([]);
    expect(chartSignals(new Array(8).fill(0.1), limits)).toEqual([{ rule, side: 'high', index: 7 }]);
    expect(chartSignals([0.1, 0.1, 0.1, 0, 0.1, 0.1, 0.1, 0.1, 0.1], limits)).toEqual([]);
  });

  it('signals two of three beyond two thirds only when asked, and only on one side', () => {
    const two: ChartRule[] = ['two-of-three-beyond-two-thirds'];
    expect(chartSignals([2.5, 0, 2.5], limits)).toEqual([]);
    expect(chartSignals([2.5, 0, 2.5], limits, two)).toEqual([{ rule: two[0], side: 'high', index: 2 }]);
    expect(chartSignals([2.5, 0, -2.5], limits, two)).toEqual([]);
    // The pattern was completed one value earlier; a later ordinary value is not a second signal.
    expect(chartSignals([2.5, 2.5, 0], limits, two)).toHaveLength(1);
  });

  it('signals four of five beyond one third', () => {
    const four: ChartRule[] = ['four-of-five-beyond-one-third'];
    expect(chartSignals([1.5, 1.5, 0, 1.5, 1.5], limits, four)).toMatchObject([{ index: 4 }]);
    expect(chartSignals([1.5, 0, 0, 1.5, 1.5], limits, four)).toEqual([]);
  });

  it('measures the thirds on each side of its own when the limits are not symmetric', () => {
    const skew = { lower: 0, centre: 1, upper: 10 };
    const two: ChartRule[] = ['two-of-three-beyond-two-thirds'];
    expect(chartSignals([0.2, 0.2], skew, two)).toMatchObject([{ side: 'low', index: 1 }]);
    expect(chartSignals([6, 6], skew, two)).toEqual([]);
  });

  it('gives the mirror image for mirrored values, and the same in any unit', () => {
    const values = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(values, (x) => {
        const signals = chartSignals(x, { lower: -30, centre: 0, upper: 30 }, all);
        const mirrored = chartSignals(
          x.map((value) => -value),
          { lower: -30, centre: 0, upper: 30 },
          all,
        );
        const doubled = chartSignals(
          x.map((value) => 2 * value),
          { lower: -60, centre: 0, upper: 60 },
          all,
        );
        expect(doubled).toEqual(signals);
        expect(mirrored.map(({ rule, index }) => `${rule}${index}`).sort()).toEqual(
          signals.map(({ rule, index }) => `${rule}${index}`).sort(),
        );
      }),
    );
  });

  it.each(badReadings)('refuses values with %s', (_, values) => {
    expect(() => chartSignals(values, limits)).toThrow(saysRule('chartSignals'));
  });

  it.each([
    { lower: 3, centre: 0, upper: -3 },
    { lower: Number.NaN, centre: 0, upper: 3 },
    { lower: -3, centre: 4, upper: 3 },
    { lower: -3, centre: 0, upper: Number.POSITIVE_INFINITY },
  ])('refuses the limits %o', (bad) => {
    expect(() => chartSignals([1], bad)).toThrow(saysRule('chartSignals'));
  });
});
