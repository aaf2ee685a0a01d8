import { type MeanComparison, meanComparison } from './mean-comparison';
import { type SampleSummary, sampleSummary } from './sample-summary';

/**
 * Pooled comparison of two means under the assumption of one spread for both. Older texts print it;
 * Welch's comparison needs no such assumption and is the one to prefer.
 *
 * Formula: s² = ((n₁ − 1)·s₁² + (n₂ − 1)·s₂²)/(n₁ + n₂ − 2), d ± t·s·√(1/n₁ + 1/n₂)
 *   d   difference of the means, first minus second, in the unit of the readings
 *   s₁, s₂, n₁, n₂  sample deviations and numbers of readings
 *   t   two-sided Student quantile on n₁ + n₂ − 2 degrees of freedom
 * Source: any text, e.g. NIST/SEMATECH e-Handbook 1.3.5.3.
 *
 * @throws {RangeError} pooledComparison requires at least two readings
 * @throws {RangeError} pooledComparison requires readings that differ
 * @throws {RangeError} pooledComparison requires a confidence above 0 and below 1
 * @example
 * pooledComparison([1, 2, 3], [3, 4, 5]).degreesOfFreedom // => 4
 */
export function pooledComparison(
  first: readonly number[] | SampleSummary,
  second: readonly number[] | SampleSummary,
  options: { readonly confidence?: number } = {},
): MeanComparison {
  const a = sampleSummary('pooledComparison', first);
  const b = sampleSummary('pooledComparison', second);
  const degreesOfFreedom = a.count + b.count - 2;
  const pooled = Math.hypot(
    a.deviation * Math.sqrt((a.count - 1) / degreesOfFreedom),
    b.deviation * Math.sqrt((b.count - 1) / degreesOfFreedom),
  );
  const standardError = pooled * Math.sqrt(1 / a.count + 1 / b.count);
  const { confidence = 0.95 } = options;
  return meanComparison('pooledComparison', a.mean - b.mean, standardError, degreesOfFreedom, confidence);
}
