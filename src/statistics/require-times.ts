import { requireNumber } from './require-number';

/**
 * Requirement on times of one unit that are added and multiplied: each from 0 to 1e150, so that no sum or product
 * of a few of them leaves the range of a number.
 *
 * @throws {RangeError} "functionName requires times from 0 to 1e150"
 */
export function requireTimes(functionName: string, times: readonly number[]): void {
  for (const time of times) {
    requireNumber(functionName, 'times from 0 to 1e150', time, time >= 0 && time <= 1e150);
  }
}
