import { controlChartConstants } from './control-chart-constants';
import { observedMean } from './observed-mean';
import { requireEqualSubgroups } from './require-equal-subgroups';

export type ChartLimits = { readonly centre: number; readonly lower: number; readonly upper: number };

export type MeanRangeChart = {
  readonly means: ChartLimits;
  readonly ranges: ChartLimits;
  readonly subgroupMeans: readonly number[];
  readonly subgroupRanges: readonly number[];
};

/**
 * Mean and range chart (x̄–R): limits for the means and the ranges of small subgroups of equal size.
 * Not for daily averages of hundreds of parts: days differ for more reasons than parts within a day.
 *
 * Formula: means x̿ ± A₂·R̄, ranges D₃·R̄ to D₄·R̄
 *   x̿  mean of the subgroup means, in the unit of the readings
 *   R̄  mean of the subgroup ranges, same unit
 * Source: D. C. Montgomery, Introduction to Statistical Quality Control, 6th edition, equations 6-4, 6-5.
 *
 * @throws {RangeError} meanRangeChart requires at least two subgroups
 * @throws {RangeError} meanRangeChart requires subgroups of one size from 2 to 50
 * @example
 * meanRangeChart([[1, 3], [2, 4]]).ranges.centre // => 2
 */
export function meanRangeChart(subgroups: readonly (readonly number[])[]): MeanRangeChart {
  const { A2, D3, D4 } = controlChartConstants(requireEqualSubgroups('meanRangeChart', subgroups));
  const subgroupMeans = subgroups.map((subgroup) => observedMean(subgroup));
  const subgroupRanges = subgroups.map((subgroup) => Math.max(...subgroup) - Math.min(...subgroup));
  const centre = observedMean(subgroupMeans);
  const range = observedMean(subgroupRanges);
  return {
    means: { centre, lower: centre - A2 * range, upper: centre + A2 * range },
    ranges: { centre: range, lower: D3 * range, upper: D4 * range },
    subgroupMeans,
    subgroupRanges,
  };
}
