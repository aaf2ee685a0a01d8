import { seededRandom } from '../../statistics/seeded-random';

const MODULUS = 2_147_483_647n;
const MULTIPLIER = 16_807n;
/** Draws between the beginnings of two streams: forty of them before the source repeats itself. */
const APART = 50_000_017n;

/**
 * A stream of chance of its own for each purpose, all from one seed: a change to the cell then uses up none of the
 * chance that another purpose draws, and present and proposed meet the same luck.
 *
 * They are stretches of one sequence that lie far apart. Seeds of their own would not do: neighbouring seeds of
 * this source give streams in proportion, and a drawn number as a seed gives the same stream one draw later.
 *
 * Formula: seed(k) = seed · 16807^(k · 50,000,017) mod (2³¹ − 1)
 *
 * @throws {RangeError} seededRandom requires a whole seed from 1 to 2147483646
 */
export function randomStreams(seed: number, count: number): (() => number)[] {
  const jump = power(MULTIPLIER, APART);
  let at = BigInt(seed);
  return Array.from({ length: count }, () => {
    const stream = seededRandom(Number(at));
    at = (at * jump) % MODULUS;
    return stream;
  });
}

function power(base: bigint, exponent: bigint): bigint {
  let [result, square, left] = [1n, base, exponent];
  for (; left > 0n; left >>= 1n) {
    if (left & 1n) result = (result * square) % MODULUS;
    square = (square * square) % MODULUS;
  }
  return result;
}
