import { requireNumber } from './require-number';

/**
 * Requirement on a probability that a quantile is asked for: above 0 and below 1, since both ends lie at
 * infinity.
 *
 * @throws {RangeError} "functionName requires a probability above 0 and below 1"
 */
export function requireProbability(functionName: string, probability: number): void {
  requireNumber(
    functionName,
    'a probability above 0 and below 1',
    probability,
    probability > 0 && probability < 1,
  );
}
