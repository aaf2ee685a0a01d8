import { requireReadings } from './require-readings';

/**
 * Mid-ranks: the place of each value in order of size, equal values sharing the mean of their places.
 *
 * Formula: rank = (number smaller) + (number equal + 1)/2
 * Source: M. G. Kendall, Biometrika 33, 1945 (ties).
 *
 * @throws {RangeError} midRanks requires at least one reading
 * @throws {RangeError} midRanks requires finite readings no larger than 1e150 in size
 * @example
 * midRanks([30, 10, 30]) // => [2.5, 1, 2.5]
 */
export function midRanks(values: readonly number[]): number[] {
  requireReadings('midRanks', values, 1);
  const order = values.map((_, i) => i).sort((a, b) => values[a]! - values[b]!);
  const ranks = new Array<number>(values.length).fill(0);
  for (let from = 0; from < order.length; ) {
    let to = from + 1;
    while (to < order.length && values[order[to]!] === values[order[from]!]) to += 1;
    for (let i = from; i < to; i += 1) ranks[order[i]!] = (from + 1 + to) / 2;
    from = to;
  }
  return ranks;
}
