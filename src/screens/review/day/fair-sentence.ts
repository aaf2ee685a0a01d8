import type { DayComparison } from '../../../domain/day/compare-days';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';

const words = reviewDayMore.fair;

/** How a day compares with another, in words: how much, and how much of it is the mix. */
export function fairSentence({ perGoodMs, mixShare }: DayComparison, other: string): string {
  const [own, theirs] = perGoodMs;
  const time = roundedClockFace(own);
  if (mixShare === null) return words.alike(time);
  const percent = formatNumber(100 * Math.abs(own / theirs - 1));
  const side = own > theirs ? 'more' : 'less';
  if (mixShare < 0) return words.against(time, percent, side, other);
  if (mixShare > 1.005) return words.beyond(time, percent, side, other);
  return words.mix(time, percent, side, other, formatNumber(100 * mixShare));
}
