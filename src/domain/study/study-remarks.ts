import { groupBy } from '../group-by';
import type { StudyRow } from './study-row';
import type { StudySummary } from './summarise-study';

/** The shortest element a hand can time well: 0.04 min. International Labour Office and Barnes, from memory. */
export const SHORTEST_BY_HAND_MS = 2_400;
/** A study rated outside these on average is better repeated with another operator; common practice. */
export const FAIR_RATINGS = { from: 80, to: 120 };

/** Elements of hand work that are over, on average, before a hand can time them well: merge them with a neighbour. */
export function tooShortByHand({ elements }: StudySummary): string[] {
  return elements.flatMap(({ element, elementClass, work, observedMeanMs }) =>
    elementClass !== 'foreign' &&
    work !== 'machine' &&
    observedMeanMs !== null &&
    observedMeanMs < SHORTEST_BY_HAND_MS
      ? [element]
      : [],
  );
}

/**
 * The mean rating of the work by hand, weighted with its time, where it lies outside what can be judged well; null
 * inside, and where nothing was rated.
 */
export function unfairMeanRating(rows: readonly StudyRow[]): number | null {
  const judged = rows.filter(
    ({ elementClass, work, excluded, observedMs }) =>
      elementClass !== 'foreign' && work !== 'machine' && excluded === null && observedMs !== null,
  );
  const observedMs = judged.reduce((sum, row) => sum + row.observedMs!, 0);
  if (observedMs === 0) return null;
  const rated = judged.reduce((sum, row) => sum + row.observedMs! * row.ratingPct, 0);
  const mean = rated / observedMs;
  return mean < FAIR_RATINGS.from || mean > FAIR_RATINGS.to ? mean : null;
}

/** Elements with a rating outside 75 to 125: beyond these a pace is hardly judged to a step of five. */
export function rareRatings(rows: readonly StudyRow[]): string[] {
  const rare = rows.filter(
    ({ excluded, observedMs, ratingPct }) =>
      excluded === null && observedMs !== null && (ratingPct < 75 || ratingPct > 125),
  );
  return [...groupBy(rare, ({ element }) => element).keys()];
}
