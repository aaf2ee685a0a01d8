import { describe, expect, it } from 'vitest';
import { controlChartConstants } from '../../src/statistics/control-chart-constants';
import { meanRangeChart } from '../../src/statistics/mean-range-chart';
import { saysRule } from './bad-readings';

describe('meanRangeChart', () => {
  it('puts the limits of means A2 mean ranges from the grand mean', () => {
    // Means 2 and 3, ranges 2 and 2, by hand.
    const chart = meanRangeChart([
      [1, 3],
      [2, 4],
    ]);
    expect(chart.means.centre).toBe(2.5);
    expect(chart.ranges.centre).toBe(2);
    expect(chart.means.upper).toBeCloseTo(2.5 + 2 * controlChartConstants(2).A2, 12);
    expect(chart.means.lower).toBeCloseTo(2.5 - 2 * controlChartConstants(2).A2, 12);
    expect(chart.ranges.lower).toBe(0);
    expect(chart.subgroupMeans).toEqual([2, 3]);
    expect(chart.subgroupRanges).toEqual([2, 2]);
  });

  it('does not change with the order of readings inside a subgroup', () => {
    const one = meanRangeChart([
      [5, 1, 3],
      [2, 9, 4],
    ]);
    const other = meanRangeChart([
      [1, 3, 5],
      [9, 4, 2],
    ]);
    expect(other).toEqual(one);
  });

  it.each([
    ['no subgroup', []],
    ['one subgroup', [[1, 2, 3]]],
    ['subgroups of one reading', [[1], [2]]],
    [
      'subgroups of two sizes',
      [
        [1, 2],
        [1, 2, 3],
      ],
    ],
    ['empty subgroups', [[], []]],
    [
      'NaN',
      [
        [1, 2],
        [1, Number.NaN],
      ],
    ],
    [
      '1e308',
      [
        [1, 2],
        [1, 1e308],
      ],
    ],
    [
      'Infinity',
      [
        [1, 2],
        [1, Number.POSITIVE_INFINITY],
      ],
    ],
  ])('refuses %s', (_, subgroups) => {
    expect(() => meanRangeChart(subgroups)).toThrow(saysRule('meanRangeChart'));
  });
});
