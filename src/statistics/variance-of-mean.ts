import { requireNumber } from './require-number';

/** A plan of timing, and the spreads it meets. */
export interface TimingPlan {
  /** Variance within an operator-day, σ_w². */
  readonly within: number;
  /** Variance between operator-days, σ_b². */
  readonly between: number;
  /** Operator-days, g, equally long. */
  readonly groups: number;
  /** Readings in all, N. */
  readonly n: number;
}

/**
 * Variance of the mean under a plan: shows why another operator on another day does more than another hour.
 *
 * Formula: Var(x̄) = σ_b²/g + σ_w²/N
 *   σ²  variances in the unit of the readings squared, the answer too; g  operator-days and N  readings, counts
 * Source: Searle, Casella & McCulloch, Variance Components (1992), chapter 3 (from memory).
 *
 * @throws {RangeError} varianceOfMean requires finite variances of 0 or more
 * @throws {RangeError} varianceOfMean requires at least one operator-day
 * @throws {RangeError} varianceOfMean requires at least one reading in each operator-day
 * @example
 * varianceOfMean({ within: 9, between: 4, groups: 2, n: 18 }) // => 2.5
 */
export function varianceOfMean({ within, between, groups, n }: TimingPlan): number {
  for (const variance of [within, between]) {
    requireNumber('varianceOfMean', 'finite variances of 0 or more', variance, variance >= 0);
  }
  requireNumber('varianceOfMean', 'at least one operator-day', groups, groups >= 1);
  requireNumber('varianceOfMean', 'at least one reading in each operator-day', n, n >= groups);
  return between / groups + within / n;
}
