import { requireReadings } from './require-readings';

/**
 * Requirement on readings whose logarithm or ratio is taken: enough of them, finite, above zero.
 *
 * @throws {RangeError} with one sentence that begins with `functionName`
 */
export function requirePositiveReadings(
  functionName: string,
  readings: readonly number[],
  atLeast: number,
): void {
  requireReadings(functionName, readings, atLeast);
  for (const reading of readings) {
    if (!(reading > 0)) throw new RangeError(`${functionName} requires readings above zero`);
  }
}
