import { requireNumber } from './require-number';

/**
 * Requirement on degrees of freedom: above 0, whole or not, and at most 1e15, past which a double no longer
 * tells neighbours apart.
 *
 * @throws {RangeError} "functionName requires degrees of freedom above 0 and at most 1e15"
 */
export function requireDegreesOfFreedom(functionName: string, degreesOfFreedom: number): void {
  requireNumber(
    functionName,
    'degrees of freedom above 0 and at most 1e15',
    degreesOfFreedom,
    degreesOfFreedom > 0 && degreesOfFreedom <= 1e15,
  );
}
