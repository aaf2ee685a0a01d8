import type { Tails } from './beta-tails';
import { continuedFraction } from './continued-fraction';
import { deviancePart } from './deviance-part';
import { stirlingError } from './stirling-error';

/**
 * Tails of the gamma distribution with unit scale: the regularised incomplete gamma functions P and Q.
 *
 * Formula: lower = P(a, x) = x^a·e^−x/Γ(a + 1) · Σ x^k/((a + 1)…(a + k)), for x < a + 1
 *          upper = Q(a, x) by Legendre's continued fraction, else
 *   a  shape, above 0; x  pure number, 0 or more. The smaller tail is computed, the other is its complement.
 * Source: Abramowitz & Stegun 6.5.29 and 6.5.31; factor in front after Loader (2000), as in beta-tails.ts.
 *
 * Callers check their input.
 *
 * @example
 * gammaTails(1, 2).upper // => 0.1353352832366127
 */
export function gammaTails(a: number, x: number): Tails {
  if (x <= 0) return { lower: 0, upper: 1, slope: 0 };
  // x^a·e^−x / Γ(a), which is a times the Poisson term x^a·e^−x / Γ(a + 1).
  const slope = Math.exp(-stirlingError(a) - deviancePart(a, x)) * Math.sqrt(a / (2 * Math.PI));
  if (x < a + 1) {
    const lower = (slope / a) * powerSeries(a, x);
    return { lower, upper: 1 - lower, slope };
  }
  const fraction = continuedFraction(
    (k) => k * (a - k),
    (k) => x + 1 - a + 2 * k,
  );
  const upper = slope / fraction;
  return { lower: 1 - upper, upper, slope };
}

function powerSeries(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; ; k += 1) {
    term *= x / (a + k);
    sum += term;
    if (term <= sum * Number.EPSILON) return sum;
  }
}
