/** An exact zero inside the evaluation is moved by less than any digit of the answer. */
const SMALLEST = 1e-300;

/**
 * Continued fraction b₀ + a₁/(b₁ + a₂/(b₂ + …)), evaluated forwards until it no longer changes.
 *
 * Source: Lentz's method as modified by Thompson & Barnett, Journal of Computational Physics 64 (1986),
 *   pp. 490–509.
 *
 * Callers pass fractions that converge.
 *
 * @example
 * continuedFraction(() => 1, () => 1) // => 1.618033988749895
 */
export function continuedFraction(
  numerator: (level: number) => number,
  denominator: (level: number) => number,
): number {
  let fraction = denominator(0) || SMALLEST;
  let c = fraction;
  let d = 0;
  for (let level = 1; ; level += 1) {
    const a = numerator(level);
    const b = denominator(level);
    d = 1 / (b + a * d || SMALLEST);
    c = b + a / c || SMALLEST;
    const change = c * d;
    fraction *= change;
    // Asked this way round, a NaN ends the loop too.
    if (!(Math.abs(change - 1) > 2 * Number.EPSILON)) return fraction;
  }
}
