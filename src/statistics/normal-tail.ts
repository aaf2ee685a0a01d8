import { continuedFraction } from './continued-fraction';

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
/** Below this the series needs fewer terms than the fraction; above it 1 − lower would cancel. */
const SERIES_UP_TO = 2.5;

/**
 * Standard normal density.
 *
 * Formula: φ(z) = e^(−z²/2)/√(2π), z a pure number
 *
 * @example
 * normalDensity(0) // => 0.3989422804014327
 */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / ROOT_TWO_PI;
}

/**
 * Central half of the normal: the probability between 0 and z.
 *
 * Formula: φ(z)·(z + z³/3 + z⁵/(3·5) + …), all terms of one sign, so small z keep every digit
 * Source: Abramowitz & Stegun 26.2.11.
 *
 * @example
 * normalCentre(1) // => 0.3413447460685429
 */
export function normalCentre(z: number): number {
  if (Math.abs(z) > SERIES_UP_TO) return Math.sign(z) * (0.5 - normalUpperTail(Math.abs(z)));
  let term = z;
  let sum = z;
  for (let k = 3; ; k += 2) {
    term *= (z * z) / k;
    const next = sum + term;
    if (next === sum) return sum * normalDensity(z);
    sum = next;
  }
}

/**
 * Upper tail of the normal: P(Z > z), to full relative precision however small.
 *
 * Formula: φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))) for z > 2.5, else ½ − central half
 * Source: Laplace's continued fraction, Abramowitz & Stegun 26.2.14.
 *
 * @example
 * normalUpperTail(3) // => 0.0013498980316300957
 */
export function normalUpperTail(z: number): number {
  if (z <= SERIES_UP_TO) return 0.5 - normalCentre(z);
  const fraction = continuedFraction(
    (k) => k,
    () => z,
  );
  return normalDensity(z) / fraction;
}
