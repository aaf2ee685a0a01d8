import { observedMean } from './observed-mean';
import { requireConfidence } from './require-confidence';
import { requireReadings } from './require-readings';
import { sampleStandardDeviation } from './sample-standard-deviation';
import { studentQuantile } from './student-quantile';

/** A mean difference with its interval, in the unit of the pairs. */
export interface PairedComparison {
  readonly difference: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * Paired comparison: the mean of differences that belong together, second minus first, with its interval. What
 * both of a pair share, a day or the same random numbers, falls out of it.
 *
 * Formula: d̄ ± t·s/√n
 *   d     differences, any one unit; d̄, s  their mean and sample deviation; n their number
 *   t     two-sided Student quantile on n − 1 degrees of freedom
 *   Differences that are all equal have an interval of no width.
 * Source: W. S. Gosset ("Student"), Biometrika 6, 1908; NIST/SEMATECH e-Handbook 7.3.1.1.
 *
 * @throws {RangeError} pairedComparison requires at least two readings
 * @throws {RangeError} pairedComparison requires as many second readings as first
 * @throws {RangeError} pairedComparison requires a confidence above 0 and below 1
 * @example
 * pairedComparison([1, 2, 3], [2, 4, 6]).difference // => 2
 */
export function pairedComparison(
  first: readonly number[],
  second: readonly number[],
  { confidence = 0.95 }: { readonly confidence?: number } = {},
): PairedComparison {
  requireReadings('pairedComparison', first, 2);
  requireReadings('pairedComparison', second, 2);
  requireConfidence('pairedComparison', confidence);
  if (first.length !== second.length) {
    throw new RangeError('pairedComparison requires as many second readings as first');
  }
  const differences = first.map((value, place) => second[place]! - value);
  const difference = observedMean(differences);
  const t = studentQuantile((1 + confidence) / 2, differences.length - 1);
  const reach = (t * sampleStandardDeviation(differences)) / Math.sqrt(differences.length);
  return { difference, lower: difference - reach, upper: difference + reach };
}
