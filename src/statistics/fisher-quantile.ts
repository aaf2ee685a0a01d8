import { logOddsTails } from './log-odds-tails';
import { positiveQuantile } from './positive-quantile';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireFiniteQuantile } from './require-finite-quantile';
import { requireProbability } from './require-probability';

/**
 * Fisher quantile: the ratio below which the share p of an F distribution lies.
 *
 * Formula: P(F ≤ f) = p
 *   p  probability, above 0 and below 1; d1, d2  degrees of freedom, above 0; f a pure number
 * Source: definition; distribution as in fisher-tails.ts, search as in positive-quantile.ts.
 *
 * @throws {RangeError} fisherQuantile requires a probability above 0 and below 1
 * @throws {RangeError} fisherQuantile requires degrees of freedom from 0.1 to 1e15
 * @throws {RangeError} fisherQuantile requires a probability whose quantile is within the range of a number
 * @example
 * fisherQuantile(0.95, 2, 10) // => 4.102821015130401
 */
export function fisherQuantile(
  probability: number,
  degreesOfFreedom1: number,
  degreesOfFreedom2: number,
): number {
  requireProbability('fisherQuantile', probability);
  requireDegreesOfFreedom('fisherQuantile', degreesOfFreedom1);
  requireDegreesOfFreedom('fisherQuantile', degreesOfFreedom2);
  const a = degreesOfFreedom1 / 2;
  const b = degreesOfFreedom2 / 2;
  const logRatio = Math.log(degreesOfFreedom1 / degreesOfFreedom2);
  const logOdds = positiveQuantile(
    (u) => logOddsTails(a, b, u),
    { lower: probability, upper: 1 - probability },
    logRatio,
  );
  return requireFiniteQuantile('fisherQuantile', Math.exp(logOdds - logRatio));
}
