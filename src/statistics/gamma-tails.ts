import type { Tails } from './beta-tails';
import { deviancePart } from './deviance-part';
import { stirlingError } from './stirling-error';

const SMALLEST = 1e-300;
const LAST_BIT = Number.EPSILON;

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
  const upper = slope * upperFraction(a, x);
  return { lower: 1 - upper, upper, slope };
}

function powerSeries(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; ; k += 1) {
    term *= x / (a + k);
    sum += term;
    if (term <= sum * LAST_BIT) return sum;
  }
}

function upperFraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1 / SMALLEST;
  let d = 1 / b;
  let fraction = d;
  for (let k = 1; ; k += 1) {
    const numerator = k * (a - k);
    b += 2;
    d = 1 / away(numerator * d + b);
    c = away(b + numerator / c);
    const change = d * c;
    fraction *= change;
    if (Math.abs(change - 1) <= LAST_BIT) return fraction;
  }
}

/** As in beta-tails.ts: an exact zero in Lentz's fraction is moved by less than any digit of the answer. */
function away(value: number): number {
  return Math.abs(value) < SMALLEST ? SMALLEST : value;
}
