import type { RatingsJudged } from '../../domain/study/ratings-judged';
import { studySheet } from '../../i18n/en/study-sheet';

/** How many ratings somebody judged; empty where all were, and where nobody can say. */
export function ratingWords(ratings: RatingsJudged | null): string {
  if (!ratings || ratings.judged === ratings.all) return '';
  return studySheet.observation.judged(ratings.judged, ratings.all);
}

/** The same beside a time that stands on them; where not one was judged, its ± stands on nothing. */
export function RatingNote({ ratings }: { ratings: RatingsJudged | null }) {
  const said = ratingWords(ratings);
  return said === '' ? null : <p class={ratings?.judged === 0 ? 'fault' : 'small'}>{said}.</p>;
}
