/**
 * Durations in whole seconds that add up to their sum in whole seconds, so that a printed list agrees
 * with its printed total. Each ends where the running sum, cut to seconds, ends.
 *
 * @example
 * wholeSeconds([1_600, 1_600, 1_600]) // => [1, 2, 1], because 4.8 s is printed as 4 s
 */
export function wholeSeconds(durationsMs: readonly number[]): number[] {
  let sumMs = 0;
  return durationsMs.map((durationMs) => {
    const before = Math.floor(sumMs / 1_000);
    sumMs += durationMs;
    return Math.floor(sumMs / 1_000) - before;
  });
}
