import { midRanks } from './mid-ranks';
import { normalProbability } from './normal-probability';
import { requireReadings } from './require-readings';

/** Below this size of both samples, and without ties, every order is counted. */
const exactBelow = 50;

export type MannWhitney = {
  /** Pairs in which the first sample's value is the larger, ties counting one half. */
  readonly u: number;
  /** The same as a share of all pairs: 0.5 when neither sample tends to be larger. */
  readonly shareLarger: number;
  /** Two-sided. */
  readonly probability: number;
  readonly method: 'exact' | 'normal';
};

/**
 * Mann–Whitney test: does one sample tend to hold larger values than the other, whatever the shape of
 * their distributions?
 *
 * Formula: U = R₁ − n₁(n₁ + 1)/2; exact: twice the smaller tail of U over all orders; else
 *          z = (|U − n₁n₂/2| − ½)/σ, σ² = n₁n₂/12·((N + 1) − Σ(t³ − t)/(N(N − 1)))
 *   R₁      sum of the mid-ranks of the first sample among all N = n₁ + n₂ values
 *   n₁, n₂  sizes of the samples
 *   t       number of values in each group of equal ones
 *   ½       continuity correction
 * Exact when no values are equal and both samples are below 50, as R's wilcox.test does, unless a method is
 * asked for.
 * Source: H. B. Mann and D. R. Whitney, Annals of Mathematical Statistics 18, 1947, pp. 50–60; ties:
 * E. L. Lehmann, Nonparametrics, section 1.4.
 *
 * @throws {RangeError} mannWhitney requires at least one reading
 * @throws {RangeError} mannWhitney requires finite readings no larger than 1e150 in size
 * @throws {RangeError} mannWhitney requires readings that differ
 * @throws {RangeError} mannWhitney requires samples below 50 without equal readings for the exact method
 * @example
 * mannWhitney([19, 22, 16, 29, 24], [20, 11, 17, 12]).u // => 17
 */
export function mannWhitney(
  first: readonly number[],
  second: readonly number[],
  options: { readonly method?: 'exact' | 'normal' } = {},
): MannWhitney {
  requireReadings('mannWhitney', first, 1);
  requireReadings('mannWhitney', second, 1);
  const all = [...first, ...second];
  const n1 = first.length;
  const n2 = second.length;
  const total = all.length;
  const ranks = midRanks(all);
  const rankSum = ranks.slice(0, n1).reduce((sum, rank) => sum + rank, 0);
  const u = rankSum - (n1 * (n1 + 1)) / 2;
  const shareLarger = u / (n1 * n2);

  const groups = new Map<number, number>();
  for (const value of all) groups.set(value, (groups.get(value) ?? 0) + 1);
  if (groups.size === 1) throw new RangeError('mannWhitney requires readings that differ');
  const canCount = groups.size === total && n1 < exactBelow && n2 < exactBelow;
  const { method = canCount ? 'exact' : 'normal' } = options;
  if (method === 'exact') {
    if (!canCount) {
      throw new RangeError(
        'mannWhitney requires samples below 50 without equal readings for the exact method',
      );
    }
    return { u, shareLarger, probability: exactProbability(u, n1, n2), method };
  }
  let ties = 0;
  for (const size of groups.values()) ties += size * size * size - size;
  const variance = ((n1 * n2) / 12) * (total + 1 - ties / (total * (total - 1)));
  const z = (Math.abs(u - (n1 * n2) / 2) - 0.5) / Math.sqrt(variance);
  const probability = Math.min(1, 2 * normalProbability(-z));
  return { u, shareLarger, probability, method };
}

/** Twice the smaller tail of U when every one of the orders is equally likely. */
function exactProbability(u: number, n1: number, n2: number): number {
  const pairs = n1 * n2;
  // ways[m][k]: orders of m firsts and n seconds with U = k. The largest value is a first (it beats all
  // n seconds) or a second. Only sums of positive counts, so the small tail keeps all its digits.
  const ways = Array.from({ length: n1 + 1 }, () => new Float64Array(pairs + 1));
  for (const row of ways) row[0] = 1;
  for (let n = 1; n <= n2; n += 1) {
    for (let m = 1; m <= n1; m += 1) {
      const row = ways[m]!;
      const fewer = ways[m - 1]!;
      for (let k = n; k <= pairs; k += 1) row[k]! += fewer[k - n]!;
    }
  }
  const counts = ways[n1]!;
  const smaller = Math.min(u, pairs - u);
  let tail = 0;
  let all = 0;
  for (let k = 0; k <= pairs; k += 1) {
    all += counts[k]!;
    if (k <= smaller) tail += counts[k]!;
  }
  return Math.min(1, (2 * tail) / all);
}
