/**
 * Deviance part: how far x lies from its mean m, as a share of the exponent of a probability.
 *
 * Formula: D(x, m) = x·ln(x/m) + m − x
 *   x, m  pure numbers above 0 in one scale; D ≥ 0 a pure number
 *   Near x = m the terms cancel, so there it is summed as a series in v = (x − m)/(x + m).
 * Source: Loader, Fast and Accurate Computation of Binomial Probabilities (2000), section 3 (there bd0).
 *
 * Callers check their input.
 *
 * @example
 * deviancePart(2, 1) // => 0.3862943611198906
 */
export function deviancePart(x: number, mean: number): number {
  const difference = x - mean;
  if (Math.abs(difference) >= 0.1 * (x + mean)) return x * Math.log(x / mean) + mean - x;
  const v = difference / (x + mean);
  let sum = difference * v;
  let power = 2 * x * v;
  for (let k = 3; ; k += 2) {
    power *= v * v;
    const next = sum + power / k;
    if (next === sum) return next;
    sum = next;
  }
}
