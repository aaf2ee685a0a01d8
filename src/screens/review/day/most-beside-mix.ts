import type { GapStep } from '../../../domain/day/day-gap';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';

const words = reviewDayMore.fair.gap;

/** Less than this a part is no cause that anybody would name. */
const WORTH_NAMING_MS = 500;

/**
 * The cause that, beside the mix, did the most of what the two days differ by; empty where none did anything of note. Of
 * a day that was entered afterwards no time of a part is known, and so no pace that could be named.
 */
export function mostBesideMix(
  steps: readonly GapStep[],
  days: readonly Pick<DaySummary, 'counted' | 'done'>[],
): string {
  if (days.some(({ counted, done }) => done > 0 && counted === 0)) return words.notRecorded;
  const wholeMs = steps.reduce((sum, { ms }) => sum + ms, 0);
  const [most] = steps
    .filter(({ cause, ms }) => cause !== 'mix' && ms * wholeMs > 0 && Math.abs(ms) >= WORTH_NAMING_MS)
    .sort((a, b) => Math.abs(b.ms) - Math.abs(a.ms));
  return most ? words.most(words.causes[most.cause], formatNumber(Math.abs(most.ms) / 1_000, 1)) : '';
}
