import { fisherTails } from './fisher-tails';
import { requireDegreesOfFreedom } from './require-degrees-of-freedom';
import { requireNumber } from './require-number';

/**
 * Student probability: the share of Student's distribution at or below t, P(T ≤ t).
 *
 * Formula: for t < 0, ½·P(F > t²) with F on 1 and ν degrees of freedom; for t > 0 the mirror image
 *   t  mean over its standard error, a pure number; ν  degrees of freedom, above 0; answer 0 to 1
 *   For a small upper tail ask for studentProbability(−t, ν), which keeps its digits.
 * Source: Student, Biometrika 6 (1908); Abramowitz & Stegun 26.7.1.
 *
 * @throws {RangeError} studentProbability requires a finite t
 * @throws {RangeError} studentProbability requires degrees of freedom from 0.1 to 1e15
 * @example
 * studentProbability(-1, 1) // => 0.25
 */
export function studentProbability(t: number, degreesOfFreedom: number): number {
  requireNumber('studentProbability', 'a finite t', t, true);
  requireDegreesOfFreedom('studentProbability', degreesOfFreedom);
  // t² may leave the range of a double at either end; both ends are then plain.
  const square = t * t;
  if (square === 0) return 0.5;
  if (square === Number.POSITIVE_INFINITY) return t < 0 ? 0 : 1;
  const { lower, upper } = fisherTails(square, 1, degreesOfFreedom);
  return t < 0 ? 0.5 * upper : 0.5 + 0.5 * lower;
}
