import { type SampleSummary, sampleSummary } from './sample-summary';
import { studentProbability } from './student-probability';
import { welchComparison } from './welch-comparison';

export type TwoOneSidedTests = {
  /** First mean minus second, in the unit of the readings. */
  readonly difference: number;
  /** Interval of confidence 1 − 2α: 90 % for α = 5 %. */
  readonly lower: number;
  readonly upper: number;
  /** The larger of the two one-sided probabilities. */
  readonly probability: number;
  /** True when the whole interval lies inside ±margin: no difference that matters. */
  readonly equivalent: boolean;
};

/**
 * Two one-sided tests: is the difference of two means shown to be smaller than one that would matter?
 * "Not shown to differ" is not the same as "shown not to differ"; this is the second.
 *
 * Formula: t₁ = (d + m)/u, t₂ = (d − m)/u, probability = max(P(T > t₁), P(T < t₂)),
 *          equivalent when d ± t(1 − α)·u lies inside ±m, which is the same as probability < α
 *   d, u  difference and its standard error, in the unit of the readings, T on Welch's degrees of freedom
 *   m     margin, the difference that would matter, fixed before looking
 *   α     significance of each test, 0.05 by default
 * Source: D. J. Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15, 1987, pp. 657–680;
 * Welch form: Gruman, Cribbie and Arpin-Cribbie, J. Modern Applied Statistical Methods 6, 2007, p. 135.
 *
 * @throws {RangeError} twoOneSidedTests requires a margin above zero
 * @throws {RangeError} twoOneSidedTests requires a significance strictly between 0 and 0.5
 * @throws {RangeError} twoOneSidedTests requires at least two readings
 * @throws {RangeError} twoOneSidedTests requires readings that differ
 * @example
 * twoOneSidedTests([5, 5.1, 4.9], [5, 5.2, 4.8], { margin: 1 }).equivalent // => true
 */
export function twoOneSidedTests(
  first: readonly number[] | SampleSummary,
  second: readonly number[] | SampleSummary,
  options: { readonly margin: number; readonly significance?: number },
): TwoOneSidedTests {
  const { margin, significance = 0.05 } = options;
  if (!(margin > 0 && margin < Number.POSITIVE_INFINITY)) {
    throw new RangeError('twoOneSidedTests requires a margin above zero');
  }
  if (!(significance > 0 && significance < 0.5)) {
    throw new RangeError('twoOneSidedTests requires a significance strictly between 0 and 0.5');
  }
  const a = sampleSummary('twoOneSidedTests', first);
  const b = sampleSummary('twoOneSidedTests', second);
  if (!(a.deviation > 0 || b.deviation > 0)) {
    throw new RangeError('twoOneSidedTests requires readings that differ');
  }
  const comparison = welchComparison(a, b, { confidence: 1 - 2 * significance });
  const { difference, standardError, degreesOfFreedom, lower, upper } = comparison;
  const probability = Math.max(
    studentProbability(-(difference + margin) / standardError, degreesOfFreedom),
    studentProbability((difference - margin) / standardError, degreesOfFreedom),
  );
  return { difference, lower, upper, probability, equivalent: lower > -margin && upper < margin };
}
