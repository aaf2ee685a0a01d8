import { requireNumber } from './require-number';
import { requireRatingScale } from './require-rating-scale';
import { type RatingScale, standardRating } from './standard-rating';

/**
 * Normal time (US), basic time (UK): the time a reading would have taken at standard pace.
 *
 * Formula: NT = OT · R/standard
 *   OT  observed time, any one unit, NT in the same; R  rating; standard  the rating that its scale gives to
 *   standard pace, 100 unless another scale is named
 * Source: International Labour Office (Kanawaty, ed.), Introduction to Work Study, 4th edition, 1992;
 *   Stevenson, Operations Management, 14th edition, equation 7-5.
 *
 * @throws {RangeError} normalTime requires an observed time from 0 to 1e150
 * @throws {RangeError} normalTime requires a rating above 0 and at most 1000
 * @throws {RangeError} normalTime requires a scale of 60-80, 75-100, 100-133 or 0-100
 * @example
 * normalTime(30, 95) // => 28.5
 */
export function normalTime(observed: number, rating: number, scale: RatingScale = '0-100'): number {
  requireNumber(
    'normalTime',
    'an observed time from 0 to 1e150',
    observed,
    observed >= 0 && observed <= 1e150,
  );
  requireNumber('normalTime', 'a rating above 0 and at most 1000', rating, rating > 0 && rating <= 1000);
  requireRatingScale('normalTime', scale);
  return (observed * rating) / standardRating(scale);
}
