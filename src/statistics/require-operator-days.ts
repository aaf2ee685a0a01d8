import { requireReadings } from './require-readings';

/**
 * Requirement on readings grouped by operator-day: at least two of them, a reading in each, and more than one in
 * some, since otherwise nothing tells the spread within from the spread between.
 *
 * @throws {RangeError} with one sentence that begins with `functionName`
 */
export function requireOperatorDays(
  functionName: string,
  operatorDays: readonly (readonly number[])[],
): void {
  if (operatorDays.length < 2) {
    throw new RangeError(`${functionName} requires at least two operator-days`);
  }
  for (const readings of operatorDays) requireReadings(functionName, readings, 1);
  if (operatorDays.every(({ length }) => length === 1)) {
    throw new RangeError(`${functionName} requires an operator-day with more than one reading`);
  }
}
