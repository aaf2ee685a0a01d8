import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { requireOperatorDays } from './require-operator-days';
import { studentQuantile } from './student-quantile';
import { varianceComponents } from './variance-components';

/** An interval of the mean over operators and days, with g beside n. */
export interface OperatorDayInterval {
  readonly mean: number;
  readonly halfWidth: number;
  readonly relativeHalfWidth: number;
  /** Operator-days, g: this, not n, is what the interval stands on. */
  readonly groups: number;
  readonly n: number;
  /** Standard deviations within and between operator-days, in the unit of the readings. */
  readonly withinDeviation: number;
  readonly betweenDeviation: number;
}

/**
 * Interval of the mean as a statement about the job, not about the mornings that were timed.
 *
 * Formula: halfWidth = t(g − 1)·√(σ_b²·Σnᵢ²/N² + σ_w²/N), which for equal counts is t(g − 1)·√(σ_b²/g + σ_w²/N)
 *   σ  components as in variance-components.ts; g  operator-days, nᵢ  readings of each, N  of all; t  two-sided
 *   Student quantile; halfWidth in the unit of the readings; confidence a share
 *   Exact for equal counts while σ_b² > 0. One operator-day says nothing about others: use mean-interval.ts
 *   and say so.
 * Source: Searle, Casella & McCulloch, Variance Components (1992), chapter 3 (from memory).
 *
 * @throws {RangeError} operatorDayInterval requires a confidence above 0 and below 1
 * @throws {RangeError} operatorDayInterval requires readings with a mean above 0
 * @throws {RangeError} operatorDayInterval requires at least two operator-days
 * @throws {RangeError} operatorDayInterval requires at least one reading, in every operator-day
 * @throws {RangeError} operatorDayInterval requires an operator-day with more than one reading
 * @example
 * operatorDayInterval([[9, 11], [13, 15]], 0.95).halfWidth.toFixed(2) // => '25.41'
 */
export function operatorDayInterval(
  operatorDays: readonly (readonly number[])[],
  confidence: number,
): OperatorDayInterval {
  requireOperatorDays('operatorDayInterval', operatorDays);
  requireConfidence('operatorDayInterval', confidence);
  const { groups, n, mean, within, between, betweenWeight } = varianceComponents(operatorDays);
  requireNumber('operatorDayInterval', 'readings with a mean above 0', mean, mean > 0);
  const t = studentQuantile((1 + confidence) / 2, groups - 1);
  const halfWidth = t * Math.sqrt(between * betweenWeight + within / n);
  return {
    mean,
    halfWidth,
    relativeHalfWidth: halfWidth / mean,
    groups,
    n,
    withinDeviation: Math.sqrt(within),
    betweenDeviation: Math.sqrt(between),
  };
}
