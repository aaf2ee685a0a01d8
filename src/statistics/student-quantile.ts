import { logOddsTails } from './log-odds-tails';
import { normalQuantile } from './normal-quantile';
import { positiveQuantile } from './positive-quantile';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireFiniteQuantile } from './require-finite-quantile';
import { requireProbability } from './require-probability';

/**
 * Student quantile: the t below which the share p of Student's distribution lies.
 *
 * Formula: P(T ≤ t) = p on ν degrees of freedom
 *   p  probability, above 0 and below 1; ν  degrees of freedom, above 0; t a pure number
 *   A two-sided 95 % interval from n readings uses p = 0.975 and ν = n − 1.
 * Method: t² is Fisher's F on 1 and ν degrees of freedom; search as in positive-quantile.ts, begun at the
 *   normal quantile.
 * Source: Student, Biometrika 6 (1908); Abramowitz & Stegun 26.7.
 *
 * @throws {RangeError} studentQuantile requires a probability above 0 and below 1
 * @throws {RangeError} studentQuantile requires degrees of freedom from 0.1 to 1e15
 * @throws {RangeError} studentQuantile requires a probability whose quantile is within the range of a number
 * @example
 * studentQuantile(0.975, 1) // => 12.706204736174698
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability('studentQuantile', probability);
  requireDegreesOfFreedom('studentQuantile', degreesOfFreedom);
  if (probability === 0.5) return 0;
  const logOdds = positiveQuantile(
    (u) => logOddsTails(0.5, degreesOfFreedom / 2, u),
    { lower: 2 * Math.abs(probability - 0.5), upper: 2 * Math.min(probability, 1 - probability) },
    2 * Math.log(Math.abs(normalQuantile(probability))) - Math.log(degreesOfFreedom),
  );
  const size = Math.exp(0.5 * (logOdds + Math.log(degreesOfFreedom)));
  return requireFiniteQuantile('studentQuantile', probability < 0.5 ? -size : size);
}
