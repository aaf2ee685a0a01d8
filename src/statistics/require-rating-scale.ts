import type { RatingScale } from './standard-rating';

const SCALES: readonly RatingScale[] = ['60-80', '75-100', '100-133', '0-100'];

/**
 * Requirement on a rating scale: one of the four of the trade.
 *
 * @throws {RangeError} "functionName requires a scale of 60-80, 75-100, 100-133 or 0-100"
 */
export function requireRatingScale(functionName: string, scale: RatingScale): void {
  if (!SCALES.includes(scale)) {
    throw new RangeError(`${functionName} requires a scale of 60-80, 75-100, 100-133 or 0-100`);
  }
}
