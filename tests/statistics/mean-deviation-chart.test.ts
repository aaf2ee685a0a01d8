import { describe, expect, it } from 'vitest';
import { controlChartConstants } from '../../src/statistics/control-chart-constants';
import { meanDeviationChart } from '../../src/statistics/mean-deviation-chart';
import { saysRule } from './bad-readings';

describe('meanDeviationChart', () => {
  it('puts the limits of means A3 mean deviations from the grand mean', () => {
    // Means 2 and 3, sample deviations 1 and 1, by hand.
    const chart = meanDeviationChart([
      [1, 2, 3],
      [2, 3, 4],
    ]);
    expect(chart.means.centre).toBe(2.5);
    expect(chart.deviations.centre).toBeCloseTo(1, 12);
    expect(chart.means.lower).toBeCloseTo(2.5 - controlChartConstants(3).A3, 12);
    expect(chart.deviations.upper).toBeCloseTo(controlChartConstants(3).B4, 12);
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
  ])('refuses %s', (_, subgroups) => {
    expect(() => meanDeviationChart(subgroups)).toThrow(saysRule('meanDeviationChart'));
  });
});
