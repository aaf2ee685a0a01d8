import { requireRatingScale } from './require-rating-scale';

/** The four rating scales of the trade, each named by its normal and its standard or by its ends. */
export type RatingScale = '60-80' | '75-100' | '100-133' | '0-100';

const STANDARD: Readonly<Record<RatingScale, number>> = {
  '60-80': 80,
  '75-100': 100,
  // Printed as 133; kept whole so that converting there and back is the identity.
  '100-133': 400 / 3,
  '0-100': 100,
};

/**
 * Standard rating: the number that a scale gives to standard pace, the brisk pace of a qualified worker.
 *
 *   answer a rating on that scale
 * Source: International Labour Office (Kanawaty, ed.), Introduction to Work Study, 4th edition, 1992, "Examples
 *   of various rates of working on the principal rating scales" (all but the 0–100 column from memory); BS 3138
 *   for 0–100.
 *
 * @throws {RangeError} standardRating requires a scale of 60-80, 75-100, 100-133 or 0-100
 * @example
 * standardRating('60-80') // => 80
 */
export function standardRating(scale: RatingScale): number {
  requireRatingScale('standardRating', scale);
  return STANDARD[scale];
}
