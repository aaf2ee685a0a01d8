import { requireNumber } from './require-number';

/**
 * Requirement on degrees of freedom, whole or not: from 0.1, below which quantiles soon leave the range of a
 * number, to 1e15, past which a double no longer tells neighbours apart. A distribution whose series takes the
 * square root of them in steps sets a lower limit, 1e9.
 *
 * @throws {RangeError} "functionName requires degrees of freedom from 0.1 to 1e15"
 */
export function requireDegreesOfFreedom(
  functionName: string,
  degreesOfFreedom: number,
  largest: 1e15 | 1e9 = 1e15,
): void {
  requireNumber(
    functionName,
    `degrees of freedom from 0.1 to ${largest === 1e9 ? '1e9' : '1e15'}`,
    degreesOfFreedom,
    degreesOfFreedom >= 0.1 && degreesOfFreedom <= largest,
  );
}
