import { normalDensity } from './normal-density';
import { normalTails } from './normal-tails';
import { requireProbability } from './require-probability';

/**
 * Normal quantile: the z below which the share p of a standard normal distribution lies.
 *
 * Formula: Φ(z) = p
 *   p  probability, above 0 and below 1; z  deviations from the mean, a pure number
 *   A two-sided 95 % statement uses p = 0.975.
 * Method: Abramowitz & Stegun 26.2.23 (error below 4.5e-4) improved by Halley's steps on the smaller tail, or
 *   on the central half near p = ½ so that small z keep their digits.
 *
 * @throws {RangeError} normalQuantile requires a probability above 0 and below 1
 * @example
 * normalQuantile(0.975) // => 1.959963984540054
 */
export function normalQuantile(probability: number): number {
  requireProbability('normalQuantile', probability);
  const fromMiddle = Math.abs(probability - 0.5);
  const side = probability < 0.5 ? -1 : 1;
  if (fromMiddle < 0.3) return side * centralQuantile(fromMiddle);
  return side * upperQuantile(Math.min(probability, 1 - probability));
}

function centralQuantile(centre: number): number {
  let z = centre / normalDensity(0);
  for (let step = 0; step < 4; step += 1)
    z -= halley((normalTails(z).centre - centre) / normalDensity(z), -z);
  return z;
}

function upperQuantile(tail: number): number {
  const t = Math.sqrt(-2 * Math.log(tail));
  let z =
    t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  for (let step = 0; step < 3; step += 1) z -= halley((tail - normalTails(z).upper) / normalDensity(z), -z);
  return z;
}

/** Halley's step from Newton's step e, with the second derivative divided by the first. */
function halley(e: number, curvature: number): number {
  return e / (1 - 0.5 * e * curvature);
}
