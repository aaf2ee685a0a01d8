import { normalTime } from './normal-time';
import { observedMean } from './observed-mean';
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
 * @throws {RangeError} normalTime requires an observed time of 0 or more
 * @throws {RangeError} normalTime requires a rating above 0
 * @example
 * meanNormalTime([{ observed: 0.2, rating: 100 }, { observed: 0.16, rating: 125 }]) // => 0.2
 */
export function meanNormalTime(readings: readonly RatedReading[], scale: RatingScale = '0-100'): number {
  if (readings.length === 0) throw new RangeError('meanNormalTime requires at least one reading');
  return observedMean(readings.map(({ observed, rating }) => normalTime(observed, rating, scale)));
}
