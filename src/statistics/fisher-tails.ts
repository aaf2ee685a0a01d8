import type { Tails } from './beta-tails';
import { logOddsTails } from './log-odds-tails';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireNumber } from './require-number';

/**
 * Both tails of Fisher's F distribution, each to full relative precision where it is small.
 *
 * Formula: lower = I_x(d1/2, d2/2), x = d1·f/(d1·f + d2); upper = 1 − lower
 *   f  ratio of two mean squares, 0 or more; d1, d2  degrees of freedom, above 0; tails pure numbers
 * Source: Abramowitz & Stegun 26.6.2.
 *
 * @throws {RangeError} fisherTails requires a finite ratio of 0 or more
 * @throws {RangeError} fisherTails requires degrees of freedom from 0.1 to 1e15
 * @example
 * fisherTails(3, 2, 10).upper // => 0.09536743164062503
 */
export function fisherTails(ratio: number, degreesOfFreedom1: number, degreesOfFreedom2: number): Tails {
  requireNumber('fisherTails', 'a finite ratio of 0 or more', ratio, ratio >= 0);
  requireDegreesOfFreedom('fisherTails', degreesOfFreedom1);
  requireDegreesOfFreedom('fisherTails', degreesOfFreedom2);
  if (ratio === 0) return { lower: 0, upper: 1, slope: 0 };
  const logOdds = Math.log(ratio) + Math.log(degreesOfFreedom1 / degreesOfFreedom2);
  return logOddsTails(degreesOfFreedom1 / 2, degreesOfFreedom2 / 2, logOdds);
}
