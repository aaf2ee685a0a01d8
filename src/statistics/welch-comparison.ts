import { type MeanComparison, meanComparison } from './mean-comparison';
import { type SampleSummary, sampleSummary } from './sample-summary';

/**
 * Welch's comparison of two means, whose spreads need not be alike: the difference with its interval.
 *
 * Formula: d = x̄₁ − x̄₂, u² = s₁²/n₁ + s₂²/n₂, ν = u⁴ / ((s₁²/n₁)²/(n₁ − 1) + (s₂²/n₂)²/(n₂ − 1)),
 *          interval d ± t·u
 *   x̄, s  mean and sample deviation of a sample, in the unit of the readings
 *   n     its readings; with daily figures, its days
 *   t     two-sided Student quantile on ν degrees of freedom
 * Source: B. L. Welch, Biometrika 34, 1947, pp. 28–35; NIST/SEMATECH e-Handbook 1.3.5.3.
 *
 * @throws {RangeError} welchComparison requires at least two readings
 * @throws {RangeError} welchComparison requires readings that differ
 * @throws {RangeError} welchComparison requires a confidence above 0 and below 1
 * @example
 * welchComparison([1, 2, 3], [3, 4, 5]).difference // => -2
 */
export function welchComparison(
  first: readonly number[] | SampleSummary,
  second: readonly number[] | SampleSummary,
  options: { readonly confidence?: number } = {},
): MeanComparison {
  const a = sampleSummary('welchComparison', first);
  const b = sampleSummary('welchComparison', second);
  const errorA = a.deviation / Math.sqrt(a.count);
  const errorB = b.deviation / Math.sqrt(b.count);
  const standardError = Math.hypot(errorA, errorB);
  // Shares of the variance, not fourth powers of it: these neither overflow nor underflow.
  const shareA = standardError > 0 ? (errorA / standardError) ** 2 : 0;
  const shareB = standardError > 0 ? (errorB / standardError) ** 2 : 0;
  const degreesOfFreedom = 1 / ((shareA * shareA) / (a.count - 1) + (shareB * shareB) / (b.count - 1));
  const { confidence = 0.95 } = options;
  return meanComparison('welchComparison', a.mean - b.mean, standardError, degreesOfFreedom, confidence);
}
