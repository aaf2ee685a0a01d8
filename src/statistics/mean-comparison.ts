import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { studentProbability } from './student-probability';
import { studentQuantile } from './student-quantile';

export type MeanComparison = {
  /** First mean minus second, in the unit of the readings. */
  readonly difference: number;
  readonly standardError: number;
  readonly t: number;
  readonly degreesOfFreedom: number;
  /** Two-sided. */
  readonly probability: number;
  /** Interval of the difference. */
  readonly lower: number;
  readonly upper: number;
};

/**
 * Comparison of a difference with its standard error: t, its two-sided probability and the interval.
 *
 * Formula: t = d/u, interval d ± t*·u
 *   d   difference, any unit
 *   u   its standard error, same unit
 *   t*  two-sided Student quantile on the degrees of freedom
 * Source: W. S. Gosset ("Student"), Biometrika 6, 1908.
 *
 * @throws {RangeError} "<name> requires readings that differ" when the standard error is not above zero
 * @throws {RangeError} "<name> requires a confidence above 0 and below 1"
 * @example
 * meanComparison('welchComparison', 2, 1, 10, 0.95).t // => 2
 */
export function meanComparison(
  name: string,
  difference: number,
  standardError: number,
  degreesOfFreedom: number,
  confidence: number,
): MeanComparison {
  requireConfidence(name, confidence);
  const t = difference / standardError;
  requireNumber(name, 'readings that differ', t, standardError > 0);
  const probability = Math.min(1, 2 * studentProbability(-Math.abs(t), degreesOfFreedom));
  const reach = studentQuantile(1 - (1 - confidence) / 2, degreesOfFreedom) * standardError;
  return {
    difference,
    standardError,
    t,
    degreesOfFreedom,
    probability,
    lower: difference - reach,
    upper: difference + reach,
  };
}
