import { type MeanComparison, meanComparison } from './mean-comparison';
import { requireReadings } from './require-readings';

/**
 * Comparison of two groups of clusters by leaving out one cluster at a time: readings of one day share its
 * material, its crew and its trouble, so that the day is what repeats, whatever figure is made of the days.
 *
 * Formula: d = θ₁ − θ₂, u² = u₁² + u₂², u_g² = (n − 1)/n · Σ(θ₍ᵢ₎ − θ̄₍·₎)² over the n clusters of a group,
 *          ν = u⁴ / (u₁⁴/(n₁ − 1) + u₂⁴/(n₂ − 1)), interval d ± t·u
 *   θ     the figure of a group, any unit; θ₍ᵢ₎ the same without cluster i
 *   t     two-sided Student quantile on ν degrees of freedom
 * Where the figure is the mean of one value a cluster this is Welch's comparison, digit for digit.
 * Source: R. G. Miller, Biometrika 61, 1974, pp. 1–15; B. Efron and R. J. Tibshirani, An Introduction to the
 * Bootstrap, 1993, chapter 11. Degrees of freedom after Welch and Satterthwaite.
 *
 * @param figure of a group; it is asked for each group whole, and without each of its clusters
 * @throws {RangeError} jackknifeComparison requires at least two clusters in each group
 * @throws {RangeError} jackknifeComparison requires finite readings no larger than 1e150 in size
 * @throws {RangeError} jackknifeComparison requires readings that differ
 * @example
 * jackknifeComparison([1, 2, 3], [3, 4, 5], (days) => days.reduce((a, b) => a + b) / days.length).difference // => -2
 */
export function jackknifeComparison<Cluster>(
  first: readonly Cluster[],
  second: readonly Cluster[],
  figure: (clusters: readonly Cluster[]) => number,
  options: { readonly confidence?: number } = {},
): MeanComparison {
  if (first.length < 2 || second.length < 2) {
    throw new RangeError('jackknifeComparison requires at least two clusters in each group');
  }
  const errors = [first, second].map((group) => {
    const without = group.map((_, left) => figure(group.filter((__, place) => place !== left)));
    requireReadings('jackknifeComparison', without, 2);
    const n = group.length;
    const mean = without.reduce((sum, value) => sum + value, 0) / n;
    return Math.sqrt(((n - 1) / n) * without.reduce((sum, value) => sum + (value - mean) ** 2, 0));
  });
  const standardError = Math.hypot(...errors);
  const shares = errors.map((error) => (standardError > 0 ? (error / standardError) ** 2 : 0));
  const degreesOfFreedom = 1 / (shares[0]! ** 2 / (first.length - 1) + shares[1]! ** 2 / (second.length - 1));
  const difference = figure(first) - figure(second);
  return meanComparison(
    'jackknifeComparison',
    difference,
    standardError,
    degreesOfFreedom,
    options.confidence ?? 0.95,
  );
}
