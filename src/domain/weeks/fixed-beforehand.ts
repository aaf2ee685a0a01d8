import { localDay } from '../day/local-day';
import type { ComparisonTerms } from '../records/review-fact';
import type { Stamp } from '../records/stamp';

/**
 * Whether the difference that matters was written down before the days it is held against were worked: on the first of
 * them at the latest. Later, nobody can know what its writer had seen.
 */
export function isFixedBeforehand({
  at,
  afterFrom,
}: Pick<ComparisonTerms, 'afterFrom'> & { at: Stamp }): boolean {
  return localDay(at) <= afterFrom;
}
