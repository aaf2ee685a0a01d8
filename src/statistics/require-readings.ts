/** Squares and sums of squares of readings up to this size stay finite for any count a tablet can hold. */
const LARGEST_READING = 1e150;

/** Counts in words, as the one-sentence messages spell them. */
const COUNT_IN_WORDS = ['no', 'one', 'two', 'three', 'four'];

/**
 * Requirement on readings: enough of them, each a finite number no larger than 1e150 in size.
 *
 * Readings past 1e150 are refused rather than summed, because their squares leave the range of a double and
 * would come back as Infinity or NaN.
 *
 * @throws {RangeError} with one sentence that begins with `functionName`
 */
export function requireReadings(functionName: string, readings: readonly number[], atLeast: number): void {
  if (readings.length < atLeast) {
    const count = COUNT_IN_WORDS[atLeast] ?? atLeast;
    throw new RangeError(
      `${functionName} requires at least ${count} ${atLeast === 1 ? 'reading' : 'readings'}`,
    );
  }
  const n = readings.length;
  for (let i = 0; i < n; i += 1) {
    const reading = readings[i]!;
    // Written so that NaN fails it too.
    if (!(Math.abs(reading) <= LARGEST_READING)) {
      throw new RangeError(`${functionName} requires finite readings no larger than 1e150 in size`);
    }
  }
}
