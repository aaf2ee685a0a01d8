import { normalCentre, normalUpperTail } from './normal-tail';
import { requireNumber } from './require-number';

/**
 * Normal probability: the share of a standard normal distribution at or below z, P(Z ≤ z).
 *
 * Formula: Φ(z) = ∫ e^(−t²/2)/√(2π) dt from −∞ to z
 *   z  deviations from the mean, a pure number; answer 0 to 1
 *   For a small upper tail ask for normalProbability(−z), which keeps its digits.
 * Source: Abramowitz & Stegun 26.2.11 and 26.2.14 (see normal-tail.ts).
 *
 * @throws {RangeError} normalProbability requires a finite z
 * @example
 * normalProbability(1.96) // => 0.9750021048517795
 */
export function normalProbability(z: number): number {
  requireNumber('normalProbability', 'a finite z', z, true);
  if (z < -1) return normalUpperTail(-z);
  return z > 1 ? 1 - normalUpperTail(z) : 0.5 + normalCentre(z);
}
