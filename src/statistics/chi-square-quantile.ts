import { gammaTails } from './gamma-tails';
import { positiveQuantile } from './positive-quantile';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireFiniteQuantile } from './require-finite-quantile';
import { requireProbability } from './require-probability';

/**
 * Chi-square quantile: the x below which the share p of a chi-square distribution lies.
 *
 * Formula: P(X ≤ x) = p on ν degrees of freedom
 *   p  probability, above 0 and below 1; ν  degrees of freedom, above 0; x a pure number
 * Source: definition; distribution as in gamma-tails.ts, search as in positive-quantile.ts.
 *
 * @throws {RangeError} chiSquareQuantile requires a probability above 0 and below 1
 * @throws {RangeError} chiSquareQuantile requires degrees of freedom from 0.1 to 1e9
 * @throws {RangeError} chiSquareQuantile requires a probability whose quantile is within the range of a number
 * @example
 * chiSquareQuantile(0.95, 1) // => 3.841458820694124
 */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability('chiSquareQuantile', probability);
  requireDegreesOfFreedom('chiSquareQuantile', degreesOfFreedom, 1e9);
  const shape = degreesOfFreedom / 2;
  const logValue = positiveQuantile(
    (u) => gammaTails(shape, Math.exp(u)),
    { lower: probability, upper: 1 - probability },
    Math.log(shape),
  );
  return requireFiniteQuantile('chiSquareQuantile', 2 * Math.exp(logValue));
}
