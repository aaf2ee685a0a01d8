import { requireNumber } from './require-number';

/**
 * Requirement on what a quantile comes to: with a fraction of a degree of freedom and a probability near an end it
 * may lie past the largest number there is.
 *
 * @throws {RangeError} "functionName requires a probability whose quantile is within the range of a number"
 */
export function requireFiniteQuantile(functionName: string, quantile: number): number {
  requireNumber(functionName, 'a probability whose quantile is within the range of a number', quantile, true);
  return quantile;
}
