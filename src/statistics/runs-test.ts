import { median } from './median';
import { normalProbability } from './normal-probability';
import type { NotTested } from './not-tested';
import { requireReadings } from './require-readings';

/** Five above and five below is the smallest split whose most extreme outcome has a probability under 5 %. */
const fewestReadings = 10;

/** Up to here the numbers of orders stay below the greatest double and are summed exactly. */
const exactUpTo = 1000;

export type RunsTest =
  | NotTested
  | {
      readonly tested: true;
      readonly runs: number;
      readonly above: number;
      readonly below: number;
      readonly expectedRuns: number;
      /** (runs − expected runs) / standard deviation of runs; negative means too few runs. */
      readonly z: number;
      /** Two-sided. Small: the order of the readings is not what chance alone would give. */
      readonly probability: number;
      readonly method: 'exact' | 'normal';
    };

/**
 * Median runs test: do the readings, in order of time, change sides of their median as often as a
 * stable process would? Too few runs is a drift or a shift, too many is see-saw.
 *
 * Formula: R = 2·n₁·n₂/(n₁ + n₂) + 1, z = (runs − R)/s,
 *          s² = 2·n₁·n₂·(2·n₁·n₂ − n₁ − n₂) / ((n₁ + n₂)²·(n₁ + n₂ − 1))
 *   n₁, n₂  readings above and below the median; readings equal to it are left out
 *   runs    stretches of readings on one side
 * The probability is twice the smaller tail, exact up to 1000 readings, else from z.
 * No test below ten readings, and none when all readings off the median lie on one side of it.
 * Source: F. S. Swed and C. Eisenhart, Annals of Mathematical Statistics 14, 1943, pp. 66–87 (exact
 * distribution); NIST/SEMATECH e-Handbook 1.3.5.13 (z).
 *
 * @throws {RangeError} runsTest requires at least one reading
 * @throws {RangeError} runsTest requires finite readings no larger than 1e150 in size
 * @example
 * runsTest([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]).runs // => 2
 */
export function runsTest(readings: readonly number[]): RunsTest {
  requireReadings('runsTest', readings, 1);
  if (readings.length < fewestReadings) return { tested: false, reason: 'too-few-readings' };
  const centre = median(readings);
  const sides = readings.filter((reading) => reading !== centre).map((reading) => reading > centre);
  const above = sides.filter((side) => side).length;
  const below = sides.length - above;
  if (above === 0 || below === 0) return { tested: false, reason: 'no-spread' };

  const runs = sides.filter((side, i) => i === 0 || side !== sides[i - 1]).length;
  const total = above + below;
  const product = 2 * above * below;
  const expectedRuns = product / total + 1;
  const variance = (product * (product - total)) / (total * total * (total - 1));
  // One above and one below leaves no variance: two runs are then certain.
  const z = variance > 0 ? (runs - expectedRuns) / Math.sqrt(variance) : 0;
  const exact = total <= exactUpTo;
  const probability = exact
    ? Math.min(1, 2 * Math.min(tail(above, below, 2, runs), tail(above, below, runs, total)))
    : 2 * normalProbability(-Math.abs(z));
  const method = exact ? 'exact' : 'normal';
  return { tested: true, runs, above, below, expectedRuns, z, probability, method };
}

/** Probability that the number of runs lies from `from` to `to` when every order is equally likely. */
function tail(above: number, below: number, from: number, to: number): number {
  let ways = 0;
  for (let runs = from; runs <= to; runs += 1) {
    const half = Math.floor(runs / 2);
    ways +=
      runs % 2 === 0
        ? 2 * choose(above - 1, half - 1) * choose(below - 1, half - 1)
        : choose(above - 1, half) * choose(below - 1, half - 1) +
          choose(above - 1, half - 1) * choose(below - 1, half);
  }
  return ways / choose(above + below, above);
}

function choose(n: number, k: number): number {
  if (k < 0 || k > n) return 0;
  let ways = 1;
  for (let i = 1; i <= k; i += 1) ways = (ways * (n - k + i)) / i;
  return ways;
}
