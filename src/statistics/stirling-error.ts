import { requireNumber } from './require-number';

/** From here on the six terms below are exact to the last bit of a double. */
const SERIES_FROM = 16;

/**
 * Stirling error: what Stirling's formula leaves out of the logarithm of a factorial.
 *
 * Formula: δ(n) = ln Γ(n + 1) − (n + ½)·ln n + n − ½·ln 2π
 *   n and δ are pure numbers; n > 0, not only whole
 *   Above 16 by its asymptotic series 1/12n − 1/360n³ + …, below by stepping up with
 *   δ(n) = δ(n + 1) + (n + ½)·ln(1 + 1/n) − 1.
 * Source: Loader, Fast and Accurate Computation of Binomial Probabilities (2000), section 2; series from
 *   Abramowitz & Stegun 6.1.41.
 *
 * @throws {RangeError} stirlingError requires a finite number above 0
 * @example
 * stirlingError(1) // => 0.08106146679532726
 */
export function stirlingError(n: number): number {
  requireNumber('stirlingError', 'a finite number above 0', n, n > 0);
  let steps = 0;
  let at = n;
  while (at < SERIES_FROM) {
    steps += (at + 0.5) * Math.log1p(1 / at) - 1;
    at += 1;
  }
  const square = 1 / (at * at);
  const series =
    (1 / 12 -
      square *
        (1 / 360 -
          square * (1 / 1260 - square * (1 / 1680 - square * (1 / 1188 - (square * 691) / 360360))))) /
    at;
  return steps + series;
}
