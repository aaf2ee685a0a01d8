import { continuedFraction } from './continued-fraction';
import { deviancePart } from './deviance-part';
import { stirlingError } from './stirling-error';

/** Both tails of a distribution at a point: P(X ≤ x) and P(X > x), each to full relative precision where small. */
export interface Tails {
  readonly lower: number;
  readonly upper: number;
  /** Density times x, which is the slope of the lower tail against ln x (or against the log odds). */
  readonly slope: number;
}

/**
 * Tails of the beta distribution: the regularised incomplete beta function and its complement.
 *
 * Formula: lower = I_x(a, b) = x^a·y^b / (B(a, b) · continued fraction), y = 1 − x; upper = I_y(b, a)
 *   a, b  shapes, above 0; x, y  pure numbers, 0 to 1. Both are passed because 1 − x would lose the digits of
 *   a small y. The smaller tail is computed and the other is its complement.
 *   The factor in front is written with Stirling errors and deviances (Loader), since ln B(a, b) by logarithms
 *   of gamma functions loses seven digits at a = 500 000.
 * Source: DiDonato & Morris, ACM Transactions on Mathematical Software 18 (1992), pp. 360–373, equation 8 ff.
 *   for the fraction; Loader (2000), as in stirling-error.ts, for the factor.
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
    const lower = slope / betaFraction(a, b, x, y);
    return { lower, upper: 1 - lower, slope };
  }
  const upper = slope / betaFraction(b, a, y, x);
  return { lower: 1 - upper, upper, slope };
}

/** x^a·y^b / B(a, b). */
function betaFactor(a: number, b: number, x: number, y: number): number {
  const n = a + b;
  const exponent =
    stirlingError(n) - stirlingError(a) - stirlingError(b) - deviancePart(a, n * x) - deviancePart(b, n * y);
  return Math.exp(exponent) * Math.sqrt(a / n) * Math.sqrt(b) * Math.sqrt(1 / (2 * Math.PI));
}

/**
 * The fraction of Abramowitz & Stegun 26.5.8 with every second level folded in, as DiDonato & Morris write it.
 * The plain levels hold 1 − (a + b)x/(a + 1), which loses six digits for Student's t on a million degrees of
 * freedom; here that difference is λ = a − (a + b)x, taken from whichever of x and y is small.
 */
function betaFraction(a: number, b: number, x: number, y: number): number {
  const lambda = x <= y ? a - (a + b) * x : (a + b) * y - b;
  return continuedFraction(
    (k) => (k * (b - k) * (a + k - 1) * (a + b + k - 1) * x * x) / (a + 2 * k - 1) ** 2,
    (k) =>
      k +
      (k === 0 ? 0 : (k * (b - k) * x) / (a + 2 * k - 1)) +
      ((a + k) * (1 + lambda + k * (1 + y))) / (a + 2 * k + 1),
  );
}
