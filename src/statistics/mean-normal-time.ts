import { compensatedSum } from './compensated-sum';
import { normalTime } from './normal-time';
import { requireNumber } from './require-number';
import { requireRatingScale } from './require-rating-scale';
import type { RatingScale } from './standard-rating';

/** One reading with the pace it was seen at. */
export interface RatedReading {
  readonly observed: number;
  readonly rating: number;
}

/**
 * Mean normal time: the mean of the readings' own normal times.
 *
 * Formula: NT = Σ(OTᵢ·Rᵢ/standard)/n, the mean of products
 *   OT  observed time, any one unit, NT in the same; R  rating on the scale named; n a count
 *   Mean time by mean rating would be the product of means: it differs exactly when the rating does its work,
 *   slow readings rated low and quick ones high.
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design (from memory).
 *
 * @throws {RangeError} meanNormalTime requires at least one reading
 * @throws {RangeError} meanNormalTime requires an observed time from 0 to 1e150
 * @throws {RangeError} meanNormalTime requires a rating above 0 and at most 1000
 * @throws {RangeError} meanNormalTime requires a scale of 60-80, 75-100, 100-133 or 0-100
 * @example
 * meanNormalTime([{ observed: 0.2, rating: 100 }, { observed: 0.16, rating: 125 }]) // => 0.2
 */
export function meanNormalTime(readings: readonly RatedReading[], scale: RatingScale = '0-100'): number {
  if (readings.length === 0) throw new RangeError('meanNormalTime requires at least one reading');
  requireRatingScale('meanNormalTime', scale);
  const times = readings.map(({ observed, rating }) => {
    requireNumber(
      'meanNormalTime',
      'an observed time from 0 to 1e150',
      observed,
      observed >= 0 && observed <= 1e150,
    );
    requireNumber(
      'meanNormalTime',
      'a rating above 0 and at most 1000',
      rating,
      rating > 0 && rating <= 1000,
    );
    return normalTime(observed, rating, scale);
  });
  return compensatedSum(times) / times.length;
}
