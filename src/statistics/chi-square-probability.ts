import { gammaTails } from './gamma-tails';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireNumber } from './require-number';

/**
 * Chi-square probability: the share of a chi-square distribution at or below x, P(X ≤ x).
 *
 * Formula: P(ν/2, x/2), the regularised incomplete gamma function
 *   x  sum of squared standard deviates, 0 or more; ν  degrees of freedom, above 0; answer 0 to 1
 * Source: Abramowitz & Stegun 26.4.19.
 *
 * @throws {RangeError} chiSquareProbability requires a finite value of 0 or more
 * @throws {RangeError} chiSquareProbability requires degrees of freedom from 0.1 to 1e9
 * @example
 * chiSquareProbability(2, 2) // => 0.6321205588285577
 */
export function chiSquareProbability(value: number, degreesOfFreedom: number): number {
  requireNumber('chiSquareProbability', 'a finite value of 0 or more', value, value >= 0);
  requireDegreesOfFreedom('chiSquareProbability', degreesOfFreedom, 1e9);
  return gammaTails(degreesOfFreedom / 2, value / 2).lower;
}
