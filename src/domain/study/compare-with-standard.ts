import type { MeanComparison } from '../../statistics/mean-comparison';
import { welchComparison } from '../../statistics/welch-comparison';
import type { StudyInAnalysis } from './analyse-studies';
import { cycleTimes, FEWEST_FOR_INTERVAL } from './study-progress';

/**
 * By how much the mean rated cycle of some studies differs from that of the studies a standard rests on, with its interval
 * at 95 %, milliseconds. It speaks of the people and days timed: what the ratings leave open, occasional work, and other
 * people are not in it.
 *
 * Null while the standard's studies are not all here, while one study is on both sides, and below five whole cycles a side.
 */
export function compareWithStandard(
  chosen: readonly StudyInAnalysis[],
  standard: { readonly studies: readonly string[] },
  all: readonly StudyInAnalysis[],
): MeanComparison | null {
  const own = all.filter(({ id }) => standard.studies.includes(id));
  if (own.length < standard.studies.length || chosen.some((study) => own.includes(study))) return null;
  const [now, then] = [chosen, own].map((some) => some.flatMap(({ rows }) => cycleTimes(rows)));
  if (Math.min(now!.length, then!.length) < FEWEST_FOR_INTERVAL) return null;
  const isSpread = [now!, then!].some((cycles) => cycles.some((ms) => ms !== cycles[0]));
  return isSpread ? welchComparison(now!, then!) : null;
}
