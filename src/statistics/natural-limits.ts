import { controlChartConstants } from './control-chart-constants';
import { observedMean } from './observed-mean';
import { requireReadings } from './require-readings';

export type NaturalLimits = {
  readonly centre: number;
  readonly lower: number;
  readonly upper: number;
  readonly meanMovingRange: number;
};

/**
 * Natural limits: how far single readings of a stable process stray, from the differences between
 * neighbours alone, so that a drift does not widen the limits that should show it.
 *
 * Formula: x̄ ± 3·mR̄/d₂
 *   x̄    mean of the readings, in their unit
 *   mR̄   mean of |xᵢ − xᵢ₋₁|, in the same unit
 *   d₂   2/√π = 1.12838, computed; printed forms round it to 1.128 or 3/d₂ to 2.66 (argument `d2`)
 * Source: D. J. Wheeler, Understanding Variation, 2nd edition, chapter 3 (2.66);
 * NIST/SEMATECH e-Handbook 6.3.2.2 (3/1.128).
 *
 * @throws {RangeError} naturalLimits requires at least two readings
 * @throws {RangeError} naturalLimits requires a d2 from 0.001 to 1000
 * @example
 * naturalLimits([10, 12, 10, 12], 1.5).upper // => 15
 */
export function naturalLimits(readings: readonly number[], d2 = controlChartConstants(2).d2): NaturalLimits {
  requireReadings('naturalLimits', readings, 2);
  if (!(d2 >= 0.001 && d2 <= 1000)) {
    throw new RangeError('naturalLimits requires a d2 from 0.001 to 1000');
  }
  const centre = observedMean(readings);
  const ranges = readings.slice(1).map((reading, i) => Math.abs(reading - readings[i]!));
  const meanMovingRange = observedMean(ranges);
  const reach = (3 * meanMovingRange) / d2;
  return { centre, lower: centre - reach, upper: centre + reach, meanMovingRange };
}
