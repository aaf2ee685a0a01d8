import type { PrecisionAsked } from './precision-asked';
import { requireNumber } from './require-number';
import type { RequiredReadings } from './required-readings';
import { spreadInPrecisions } from './spread-in-precisions';
import { studentQuantile } from './student-quantile';
import { wholeReadings } from './whole-readings';

/**
 * Required readings, Student's t on the pilot: the textbook form, with t taken once from the readings in hand.
 *
 * Formula: raw = (t(n − 1)·s/(k·x̄))², readings = raw rounded up (whole-readings.ts)
 *   t(ν)  two-sided Student quantile at the confidence asked; n  pilot readings, a count; s  their sample
 *   standard deviation and x̄  their mean, one unit; k  precision, a share of the mean
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design (from memory).
 *
 * @throws {RangeError} requiredReadingsPilot requires a whole number of at least two pilot readings
 * @throws {RangeError} requiredReadingsPilot requires a mean above 0
 * @throws {RangeError} requiredReadingsPilot requires a standard deviation of 0 or more
 * @throws {RangeError} requiredReadingsPilot requires a precision above 0
 * @throws {RangeError} requiredReadingsPilot requires a confidence above 0 and below 1
 * @throws {RangeError} requiredReadingsPilot requires a spread below a million times the precision asked
 * @example
 * requiredReadingsPilot({ n: 25, mean: 0.3, standardDeviation: 0.09, precision: 0.05, confidence: 0.95 }).readings // => 154
 */
export function requiredReadingsPilot(asked: PrecisionAsked & { readonly n: number }): RequiredReadings {
  const { n } = asked;
  requireNumber(
    'requiredReadingsPilot',
    'a whole number of at least two pilot readings',
    n,
    Number.isInteger(n) && n >= 2 && n <= 1e15,
  );
  const spread = spreadInPrecisions('requiredReadingsPilot', asked);
  const raw = (studentQuantile((1 + asked.confidence) / 2, n - 1) * spread) ** 2;
  return { raw, readings: wholeReadings(raw) };
}
