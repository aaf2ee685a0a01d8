import type { PrecisionAsked } from './precision-asked';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';

/**
 * Spread in units of the precision: the ratio that every required-readings formula squares.
 *
 * Formula: s/(k·x̄)
 *   s, x̄  sample standard deviation and mean, one unit; k  precision, a share of the mean; answer a pure number
 * Source: Heizer & Render, Operations Management, 11th edition, equation 10-4.
 *
 * @throws {RangeError} "functionName requires …": a mean above 0, a standard deviation of 0 or more, a precision
 *   above 0, a confidence above 0 and below 1, a spread below a million times the precision asked
 * @example
 * spreadInPrecisions('anyName', { mean: 2, standardDeviation: 0.5, precision: 0.05, confidence: 0.95 }) // => 5
 */
export function spreadInPrecisions(functionName: string, asked: PrecisionAsked): number {
  const { mean, standardDeviation, precision, confidence } = asked;
  requireNumber(functionName, 'a mean above 0', mean, mean > 0);
  requireNumber(functionName, 'a standard deviation of 0 or more', standardDeviation, standardDeviation >= 0);
  requireNumber(functionName, 'a precision above 0', precision, precision > 0);
  requireConfidence(functionName, confidence);
  const spread = standardDeviation / (precision * mean);
  // Past this the count itself would be beyond what anyone could time.
  requireNumber(functionName, 'a spread below a million times the precision asked', spread, spread < 1e6);
  return spread;
}
