import { fisherTails } from './fisher-tails';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireNumber } from './require-number';

/**
 * Fisher probability: the share of an F distribution at or below f, P(F ≤ f).
 *
 * Formula: I_x(d1/2, d2/2), x = d1·f/(d1·f + d2)
 *   f  ratio of two mean squares, 0 or more; d1, d2  degrees of freedom, above 0; answer 0 to 1
 *   For a small upper tail take `fisherTails(…).upper`, which keeps its digits.
 * Source: Abramowitz & Stegun 26.6.2.
 *
 * @throws {RangeError} fisherProbability requires a finite ratio of 0 or more
 * @throws {RangeError} fisherProbability requires degrees of freedom from 0.1 to 1e15
 * @example
 * fisherProbability(3, 2, 10) // => 0.904632568359375
 */
export function fisherProbability(
  ratio: number,
  degreesOfFreedom1: number,
  degreesOfFreedom2: number,
): number {
  requireNumber('fisherProbability', 'a finite ratio of 0 or more', ratio, ratio >= 0);
  requireDegreesOfFreedom('fisherProbability', degreesOfFreedom1);
  requireDegreesOfFreedom('fisherProbability', degreesOfFreedom2);
  return fisherTails(ratio, degreesOfFreedom1, degreesOfFreedom2).lower;
}
