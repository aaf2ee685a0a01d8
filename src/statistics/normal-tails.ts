import { continuedFraction } from './continued-fraction';
import { normalDensity } from './normal-density';

/** Up to here the series needs few terms; from here on its complement would lose more than two digits. */
const SERIES_UP_TO = 2.5;

/** The two pieces of a normal distribution on one side of its middle; they add up to one half. */
export interface NormalTails {
  /** P(0 < Z ≤ z). */
  readonly centre: number;
  /** P(Z > z). */
  readonly upper: number;
}

/**
 * Normal tails at a z of 0 or more, the smaller piece to full relative precision.
 *
 * Formula: centre = φ(z)·(z + z³/3 + z⁵/(3·5) + …), all of one sign, for z ≤ 2.5
 *          upper = φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))), beyond
 *   z  deviations from the mean, pieces and φ  pure numbers
 * Source: Abramowitz & Stegun 26.2.11 and 26.2.14 (Laplace).
 *
 * Callers check their input.
 *
 * @example
 * normalTails(1).centre // => 0.3413447460685429
 */
export function normalTails(z: number): NormalTails {
  if (z <= SERIES_UP_TO) {
    const centre = normalDensity(z) * oddSeries(z);
    return { centre, upper: 0.5 - centre };
  }
  const fraction = continuedFraction(
    (k) => k,
    () => z,
  );
  const upper = normalDensity(z) / fraction;
  return { centre: 0.5 - upper, upper };
}

function oddSeries(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 3; ; k += 2) {
    term *= (z * z) / k;
    const next = sum + term;
    if (next === sum) return sum;
    sum = next;
  }
}
