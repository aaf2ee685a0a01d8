import { requireNumber } from './require-number';

/**
 * Requirement on a confidence: a share above 0 and below 1 (0.95, not 95).
 *
 * @throws {RangeError} "functionName requires a confidence above 0 and below 1"
 */
export function requireConfidence(functionName: string, confidence: number): void {
  requireNumber(
    functionName,
    'a confidence above 0 and below 1',
    confidence,
    confidence > 0 && confidence < 1,
  );
}
