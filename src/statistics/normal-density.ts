const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/**
 * Standard normal density.
 *
 * Formula: φ(z) = e^(−z²/2)/√(2π)
 *   z  deviations from the mean and answer, pure numbers
 * Source: Abramowitz & Stegun 26.2.1.
 *
 * Callers check their input.
 *
 * @example
 * normalDensity(0) // => 0.3989422804014327
 */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / ROOT_TWO_PI;
}
