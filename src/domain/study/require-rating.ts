/** Twice standard pace is beyond any credible rating: a slip of the finger. */
export const HIGHEST_RATING_PCT = 200;

/** @throws {RangeError} "functionName requires a rating above 0 and of at most 200" */
export function requireRating(functionName: string, ratingPct: number): void {
  if (!(ratingPct > 0 && ratingPct <= HIGHEST_RATING_PCT)) {
    throw new RangeError(`${functionName} requires a rating above 0 and of at most ${HIGHEST_RATING_PCT}`);
  }
}
