import { compensatedSum } from './compensated-sum';
import { observedMean } from './observed-mean';
import { requireOperatorDays } from './require-operator-days';
import { sumOfSquaredDeviations } from './sum-of-squared-deviations';

/** How readings spread within an operator-day, and how operator-days spread among each other. */
export interface VarianceComponents {
  /** Operator-days, g. */
  readonly groups: number;
  /** Readings in all, N. */
  readonly n: number;
  /** Mean of all readings. */
  readonly mean: number;
  /** Variance within an operator-day, σ_w², in the unit of the readings squared. */
  readonly within: number;
  /** Variance between operator-days, σ_b², never below 0. */
  readonly between: number;
  /** MS_b, in the unit of the readings squared: what an analysis of variance prints. */
  readonly meanSquareBetween: number;
  /** Σnᵢ²/N², the weight of σ_b² in the variance of the mean: 1/g when the operator-days are equally long. */
  readonly betweenWeight: number;
}

/**
 * Variance components of readings grouped by operator-day (one-way, random effects, unequal counts allowed).
 *
 * Formula: MS_b = Σnᵢ(x̄ᵢ − x̄)²/(g − 1), MS_w = ΣΣ(x − x̄ᵢ)²/(N − g), n₀ = (N − Σnᵢ²/N)/(g − 1)
 *          σ_w² = MS_w, σ_b² = max(0, (MS_b − MS_w)/n₀)
 *   x  reading, any one unit; g  operator-days, nᵢ  readings of each, N  of all, counts; variances in the unit
 *   squared
 * Source: Searle, Casella & McCulloch, Variance Components (1992), section 3.6 (from memory).
 *
 * @throws {RangeError} varianceComponents requires at least two operator-days
 * @throws {RangeError} varianceComponents requires at least one reading, in every operator-day
 * @throws {RangeError} varianceComponents requires finite readings no larger than 1e150 in size
 * @throws {RangeError} varianceComponents requires an operator-day with more than one reading
 * @example
 * varianceComponents([[1, 3], [5, 7]]).between // => 7
 */
export function varianceComponents(operatorDays: readonly (readonly number[])[]): VarianceComponents {
  requireOperatorDays('varianceComponents', operatorDays);
  const groups = operatorDays.length;
  const all = operatorDays.flat();
  const n = all.length;
  const mean = observedMean(all);
  // Taken from the mean first: group means that differ in their ninth digit would be rounded to noise otherwise.
  const deviations = operatorDays.map((readings) => readings.map((reading) => reading - mean));
  const offset = compensatedSum(deviations.flat()) / n;
  const within = compensatedSum(deviations.map(sumOfSquaredDeviations)) / (n - groups);
  const spreadOfMeans = deviations.map((x) => x.length * (compensatedSum(x) / x.length - offset) ** 2);
  const meanSquareBetween = compensatedSum(spreadOfMeans) / (groups - 1);
  const betweenWeight = compensatedSum(operatorDays.map((x) => (x.length / n) ** 2));
  const typicalCount = (n * (1 - betweenWeight)) / (groups - 1);
  const between = Math.max(0, (meanSquareBetween - within) / typicalCount);
  return { groups, n, mean, within, between, meanSquareBetween, betweenWeight };
}
