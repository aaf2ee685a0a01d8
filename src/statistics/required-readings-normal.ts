import { normalQuantile } from './normal-quantile';
import type { PrecisionAsked } from './precision-asked';
import type { RequiredReadings } from './required-readings';
import { spreadInPrecisions } from './spread-in-precisions';
import { wholeReadings } from './whole-readings';

/**
 * Required readings, normal quantile: the form that treats the pilot's deviation as if it were known.
 *
 * Formula: raw = (z·s/(k·x̄))², readings = raw rounded up (whole-readings.ts)
 *   z  two-sided normal quantile at the confidence asked; s  sample standard deviation and x̄  mean, one unit;
 *   k  precision, a share of the mean
 * Source: Heizer & Render, Operations Management, 11th edition, equation 10-4; Stevenson, Operations
 *   Management, 14th edition, equation 7-1.
 *
 * @throws {RangeError} requiredReadingsNormal requires a mean above 0
 * @throws {RangeError} requiredReadingsNormal requires a standard deviation of 0 or more
 * @throws {RangeError} requiredReadingsNormal requires a precision above 0
 * @throws {RangeError} requiredReadingsNormal requires a confidence above 0 and below 1
 * @throws {RangeError} requiredReadingsNormal requires a spread below a million times the precision asked
 * @example
 * requiredReadingsNormal({ mean: 3, standardDeviation: 1, precision: 0.05, confidence: 0.95 }).readings // => 171
 */
export function requiredReadingsNormal(asked: PrecisionAsked): RequiredReadings {
  const spread = spreadInPrecisions('requiredReadingsNormal', asked);
  const raw = (normalQuantile((1 + asked.confidence) / 2) * spread) ** 2;
  return { raw, readings: wholeReadings(raw) };
}
