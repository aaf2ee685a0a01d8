import { requireNumber } from './require-number';
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
 * @throws {RangeError} normalTime requires an observed time of 0 or more
 * @throws {RangeError} normalTime requires a rating above 0
 * @throws {RangeError} standardRating requires a scale of 60-80, 75-100, 100-133 or 0-100
 * @example
 * normalTime(30, 95) // => 28.5
 */
export function normalTime(observed: number, rating: number, scale: RatingScale = '0-100'): number {
  requireNumber('normalTime', 'an observed time of 0 or more', observed, observed >= 0);
  requireNumber('normalTime', 'a rating above 0', rating, rating > 0);
  const time = (observed * rating) / standardRating(scale);
  requireNumber('normalTime', 'a time and rating whose product is a finite number', time, true);
  return time;
}
