import { controlChartConstants } from './control-chart-constants';
import type { ChartLimits } from './mean-range-chart';
import { observedMean } from './observed-mean';
import { requireEqualSubgroups } from './require-equal-subgroups';
import { sampleStandardDeviation } from './sample-standard-deviation';

export type MeanDeviationChart = {
  readonly means: ChartLimits;
  readonly deviations: ChartLimits;
  readonly subgroupMeans: readonly number[];
  readonly subgroupDeviations: readonly number[];
};

/**
 * Mean and standard deviation chart (x̄–s): as the mean and range chart, for subgroups of about ten and
 * more, where the range wastes readings.
 *
 * Formula: means x̿ ± A₃·s̄, deviations B₃·s̄ to B₄·s̄
 *   x̿  mean of the subgroup means, in the unit of the readings
 *   s̄  mean of the subgroups' sample deviations (n − 1), same unit
 * Source: D. C. Montgomery, Introduction to Statistical Quality Control, 6th edition, equations 6-27, 6-28.
 *
 * @throws {RangeError} meanDeviationChart requires at least two subgroups
 * @throws {RangeError} meanDeviationChart requires subgroups of one size from 2 to 50
 * @example
 * meanDeviationChart([[1, 2, 3], [2, 3, 4]]).deviations.centre // => 1
 */
export function meanDeviationChart(subgroups: readonly (readonly number[])[]): MeanDeviationChart {
  const { A3, B3, B4 } = controlChartConstants(requireEqualSubgroups('meanDeviationChart', subgroups));
  const subgroupMeans = subgroups.map((subgroup) => observedMean(subgroup));
  const subgroupDeviations = subgroups.map((subgroup) => sampleStandardDeviation(subgroup));
  const centre = observedMean(subgroupMeans);
  const deviation = observedMean(subgroupDeviations);
  return {
    means: { centre, lower: centre - A3 * deviation, upper: centre + A3 * deviation },
    deviations: { centre: deviation, lower: B3 * deviation, upper: B4 * deviation },
    subgroupMeans,
    subgroupDeviations,
  };
}
