import { normalQuantile } from './normal-quantile';
import type { PrecisionAsked } from './precision-asked';
import { spreadInPrecisions } from './spread-in-precisions';
import { studentQuantile } from './student-quantile';
import { wholeReadings } from './whole-readings';

/**
 * Required readings, Student's t on the readings that will have been taken: the smallest count whose own
 * interval is as narrow as asked.
 *
 * Formula: smallest n ≥ 2 with n ≥ (t(n − 1)·s/(k·x̄))²
 *   t(ν)  two-sided Student quantile at the confidence asked; s  sample standard deviation and x̄  mean of the
 *   pilot, one unit; k  precision, a share of the mean; n a count
 *   Putting n back into the formula again and again may swing for ever between two neighbours (6, 7, 6 …).
 *   t falls as n grows, so the condition, once met, stays met, and the smallest n is found by halving.
 * Source: definition; the circularity is noted in Niebel & Freivalds, Methods, Standards, and Work Design
 *   (from memory).
 *
 * @throws {RangeError} requiredReadingsIterated requires a mean above 0
 * @throws {RangeError} requiredReadingsIterated requires a standard deviation of 0 or more
 * @throws {RangeError} requiredReadingsIterated requires a precision above 0
 * @throws {RangeError} requiredReadingsIterated requires a confidence above 0 and below 1
 * @throws {RangeError} requiredReadingsIterated requires a spread below a million times the precision asked
 * @example
 * requiredReadingsIterated({ mean: 1, standardDeviation: 0.1, precision: 0.05, confidence: 0.95 }) // => 18
 */
export function requiredReadingsIterated(asked: PrecisionAsked): number {
  const spread = spreadInPrecisions('requiredReadingsIterated', asked);
  const probability = (1 + asked.confidence) / 2;
  const enough = (n: number) => wholeReadings((studentQuantile(probability, n - 1) * spread) ** 2) <= n;
  // z < t on any degrees of freedom, so fewer readings than z asks are never enough.
  const least = Math.max(2, wholeReadings((normalQuantile(probability) * spread) ** 2));
  if (enough(least)) return least;
  let tooFew = least;
  let plenty = 2 * least;
  while (!enough(plenty)) {
    tooFew = plenty;
    plenty *= 2;
  }
  while (plenty - tooFew > 1) {
    const middle = Math.floor((tooFew + plenty) / 2);
    if (enough(middle)) plenty = middle;
    else tooFew = middle;
  }
  return plenty;
}
