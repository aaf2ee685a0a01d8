import { deviancePart } from './deviance-part';
import { stirlingError } from './stirling-error';

/** Both tails of a distribution at a point: P(X ≤ x) and P(X > x), each to full relative precision where small. */
export interface Tails {
  readonly lower: number;
  readonly upper: number;
  /** Density times x, which is the slope of the lower tail against ln x (or against the log odds). */
  readonly slope: number;
}

const SMALLEST = 1e-300;
const LAST_BIT = Number.EPSILON;

/**
 * Tails of the beta distribution: the regularised incomplete beta function and its complement.
 *
 * Formula: lower = I_x(a, b) = x^a·y^b / (a·B(a, b)) · continued fraction, y = 1 − x; upper = I_y(b, a)
 *   a, b  shapes, above 0; x, y  pure numbers, 0 to 1. Both are passed because 1 − x would lose the digits of
 *   a small y. The smaller tail is computed and the other is its complement.
 *   The factor in front is written with Stirling errors and deviances (Loader), since ln B(a, b) by logarithms
 *   of gamma functions loses seven digits at a = 500 000.
 * Source: Abramowitz & Stegun 26.5.8 for the fraction, evaluated after Lentz.
 *
 * Callers check their input.
 *
 * @example
 * betaTails(2, 3, 0.4, 0.6).lower // => 0.5248
 */
export function betaTails(a: number, b: number, x: number, y: number): Tails {
  if (x <= 0) return { lower: 0, upper: 1, slope: 0 };
  if (y <= 0) return { lower: 1, upper: 0, slope: 0 };
  const slope = betaFactor(a, b, x, y);
  if (x * (a + b + 2) <= a + 1) {
    const lower = (slope / a) * betaFraction(a, b, x);
    return { lower, upper: 1 - lower, slope };
  }
  const upper = (slope / b) * betaFraction(b, a, y);
  return { lower: 1 - upper, upper, slope };
}

/** x^a·y^b / B(a, b). */
function betaFactor(a: number, b: number, x: number, y: number): number {
  const n = a + b;
  const exponent =
    stirlingError(n) - stirlingError(a) - stirlingError(b) - deviancePart(a, n * x) - deviancePart(b, n * y);
  return Math.exp(exponent) * Math.sqrt(a / n) * Math.sqrt(b) * Math.sqrt(1 / (2 * Math.PI));
}

function betaFraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; ; m += 1) {
    const even = a + 2 * m;
    const first = (m * (b - m) * x) / ((even - 1) * even);
    d = 1 / away(1 + first * d);
    c = away(1 + first / c);
    fraction *= d * c;
    const second = (-(a + m) * (a + b + m) * x) / (even * (even + 1));
    d = 1 / away(1 + second * d);
    c = away(1 + second / c);
    const change = d * c;
    fraction *= change;
    if (Math.abs(change - 1) <= LAST_BIT) return fraction;
  }
}

/** Lentz's fraction divides by its own parts; an exact zero is moved by less than any digit of the answer. */
function away(value: number): number {
  return Math.abs(value) < SMALLEST ? SMALLEST : value;
}
