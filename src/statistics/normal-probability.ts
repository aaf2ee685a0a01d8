import { normalTails } from './normal-tails';
import { requireNumber } from './require-number';

/**
 * Normal probability: the share of a standard normal distribution at or below z, P(Z ≤ z).
 *
 * Formula: Φ(z) = ∫ e^(−t²/2)/√(2π) dt from −∞ to z
 *   z  deviations from the mean, a pure number; answer 0 to 1
 *   For a small upper tail ask for normalProbability(−z), which keeps its digits.
 * Source: Abramowitz & Stegun 26.2.2; method in normal-tails.ts.
 *
 * @throws {RangeError} normalProbability requires a finite z
 * @example
 * normalProbability(1.96) // => 0.9750021048517796
 */
export function normalProbability(z: number): number {
  requireNumber('normalProbability', 'a finite z', z, true);
  return z < 0 ? normalTails(-z).upper : 0.5 + normalTails(z).centre;
}
