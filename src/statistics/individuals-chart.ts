import { controlChartConstants } from './control-chart-constants';
import { naturalLimits } from './natural-limits';
import { requireReadings } from './require-readings';

export type IndividualsChart = {
  readonly centre: number;
  readonly lower: number;
  readonly upper: number;
  readonly meanMovingRange: number;
  readonly movingRangeUpper: number;
  /** |xᵢ − xᵢ₋₁| of all values given, one fewer than the values. */
  readonly movingRanges: readonly number[];
  /** How far the limits may be trusted: none should be drawn when 'too-few'. */
  readonly standing: 'too-few' | 'provisional' | 'firm';
};

/**
 * Individuals chart (XmR): limits for figures that come one at a time, such as a daily average.
 *
 * Formula: x̄ ± 3·mR̄/d₂ for the values, D₄·mR̄ for the moving ranges
 *   x̄, mR̄  mean and mean moving range of the baseline, in the unit of the values
 *   d₂, D₄  1.12838 and 3.26653, computed; a printed pair such as 1.128 and 3.267 can be given instead
 * The baseline is the first `baseline` values (all by default), so limits can be frozen and later values
 * compared with them. Standing by size of the baseline: below 10 too few, below 20 provisional.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2; D. J. Wheeler, Understanding Variation, 2nd edition,
 * chapter 3. The 10 and the 20 are this project's rule.
 *
 * @throws {RangeError} individualsChart requires at least two readings
 * @throws {RangeError} individualsChart requires a whole baseline from 2 to the number of values
 * @throws {RangeError} individualsChart requires a d2 and a D4 from 0.001 to 1000
 * @example
 * individualsChart([10, 12, 10, 12], { d2: 1.5, D4: 3 }).movingRangeUpper // => 6
 */
export function individualsChart(
  values: readonly number[],
  options: { readonly baseline?: number; readonly d2?: number; readonly D4?: number } = {},
): IndividualsChart {
  requireReadings('individualsChart', values, 2);
  const exact = controlChartConstants(2);
  const { baseline = values.length, d2 = exact.d2, D4 = exact.D4 } = options;
  if (!Number.isInteger(baseline) || baseline < 2 || baseline > values.length) {
    throw new RangeError('individualsChart requires a whole baseline from 2 to the number of values');
  }
  if (![d2, D4].every((constant) => constant >= 0.001 && constant <= 1000)) {
    throw new RangeError('individualsChart requires a d2 and a D4 from 0.001 to 1000');
  }
  const limits = naturalLimits(values.slice(0, baseline), d2);
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const standing = baseline < 10 ? 'too-few' : baseline < 20 ? 'provisional' : 'firm';
  return { ...limits, movingRangeUpper: D4 * limits.meanMovingRange, movingRanges, standing };
}
