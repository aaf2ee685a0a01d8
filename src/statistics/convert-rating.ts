import { requireNumber } from './require-number';
import { requireRatingScale } from './require-rating-scale';
import { type RatingScale, standardRating } from './standard-rating';

/**
 * Converted rating: the same pace on another scale.
 *
 * Formula: r′ = r · standard′/standard
 *   r  rating on the scale `from`; r′  rating on the scale `to`; standard as in standard-rating.ts
 * Source: as in standard-rating.ts.
 *
 * @throws {RangeError} convertRating requires a rating of 0 or more
 * @throws {RangeError} convertRating requires a scale of 60-80, 75-100, 100-133 or 0-100
 * @example
 * convertRating(60, '60-80', '0-100') // => 75
 */
export function convertRating(rating: number, from: RatingScale, to: RatingScale): number {
  requireNumber('convertRating', 'a rating of 0 or more', rating, rating >= 0);
  requireRatingScale('convertRating', from);
  requireRatingScale('convertRating', to);
  const converted = (rating / standardRating(from)) * standardRating(to);
  requireNumber('convertRating', 'a rating within the range of a number', converted, true);
  return converted;
}
