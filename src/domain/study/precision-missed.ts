import type { StudiesAnalysis } from './analyse-studies';
import type { RatingsJudged } from './ratings-judged';
import { usualPrecision } from './summarise-study';

/**
 * Why an issue is asked about: nobody can say how precise it is, it is less so than aimed at, or not one pace was judged,
 * and the ± of the rating is that of a judgement. Null: none of them.
 */
export function precisionMissed(
  { sampling, uncertainty }: Pick<StudiesAnalysis, 'sampling' | 'uncertainty'>,
  ratings: RatingsJudged | null,
): 'unknown' | 'wide' | 'unrated' | null {
  if (sampling === null || uncertainty === null) return 'unknown';
  if (sampling > usualPrecision.precision) return 'wide';
  return ratings?.judged === 0 ? 'unrated' : null;
}
