import { requireNumber } from './require-number';

/** How often machines wait for the one operator who serves them. Shares, 0 to 1. */
export interface RandomServicing {
  /** Chance that k machines are down at once, k = 0 … N. */
  readonly down: readonly number[];
  /** Share of the machines' time lost because more than one is down. */
  readonly lostShare: number;
}

/**
 * Random servicing: machines that call for the operator at any moment, each down a share p of the time.
 *
 * Formula: P(k) = C(N, k)·p^k·(1 − p)^(N − k); lost share = Σ max(0, k − 1)·P(k)/N
 *   N  machines; p  share of its time that one machine needs the operator; P(k)  chance that k need him at once
 *   The operator serves one of them; the others wait. Hours lost are lost share × N × hours.
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design, random servicing (from memory).
 *
 * @throws {RangeError} randomServicing requires a whole number of machines from 1 to 1000
 * @throws {RangeError} randomServicing requires a share from 0 to 1
 * @example
 * randomServicing(1, 0.25).down // => [0.75, 0.25]
 */
export function randomServicing(machines: number, shareDown: number): RandomServicing {
  const isCount = Number.isInteger(machines) && machines >= 1 && machines <= 1_000;
  requireNumber('randomServicing', 'a whole number of machines from 1 to 1000', machines, isCount);
  requireNumber('randomServicing', 'a share from 0 to 1', shareDown, shareDown >= 0 && shareDown <= 1);
  const down: number[] = [];
  let waiting = 0;
  for (let k = 0; k <= machines; k += 1) {
    const chance = choose(machines, k) * shareDown ** k * (1 - shareDown) ** (machines - k);
    down.push(chance);
    waiting += Math.max(0, k - 1) * chance;
  }
  return { down, lostShare: waiting / machines };
}

/** Ways to choose k of n: a product of ratios, which stays finite as far as n = 1000. */
function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(k, n - k); i += 1) ways = (ways * (n - Math.min(k, n - k) + i)) / i;
  return ways;
}
