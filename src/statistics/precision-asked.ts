import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';

/** What a required-readings formula is asked: the pilot's mean and spread, and the precision wanted of the mean. */
export interface PrecisionAsked {
  /** Mean of the pilot readings, any one unit. */
  readonly mean: number;
  /** Sample standard deviation (n − 1) of the pilot readings, in the unit of the mean. */
  readonly standardDeviation: number;
  /** Wanted half-width as a share of the mean: 0.05 for ±5 %. */
  readonly precision: number;
  /** Wanted confidence, two-sided, as a share: 0.95 for 95 %. */
  readonly confidence: number;
}

/** A required number of readings: as the formula gives it, and as a count that can be taken. */
export interface RequiredReadings {
  readonly raw: number;
  readonly readings: number;
}

/**
 * Spread in units of the precision: s/(k·x̄), the ratio that every required-readings formula squares.
 *
 *   s, x̄  sample standard deviation and mean, one unit; k  precision, a share of the mean; answer a pure number
 *
 * @throws {RangeError} "functionName requires …" a mean above 0, a standard deviation of 0 or more, a precision
 *   above 0, a confidence above 0 and below 1
 */
export function spreadInPrecisions(functionName: string, asked: PrecisionAsked): number {
  const { mean, standardDeviation, precision, confidence } = asked;
  requireNumber(functionName, 'a mean above 0', mean, mean > 0);
  requireNumber(functionName, 'a standard deviation of 0 or more', standardDeviation, standardDeviation >= 0);
  requireNumber(functionName, 'a precision above 0', precision, precision > 0);
  requireConfidence(functionName, confidence);
  const spread = standardDeviation / (precision * mean);
  // Past this the count itself would be beyond the whole numbers that a double can tell apart.
  requireNumber(functionName, 'a spread below a million times the precision asked', spread, spread < 1e6);
  return spread;
}
