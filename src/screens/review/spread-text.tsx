import { FEW_PARTS } from '../../domain/day/few-parts';
import type { PartOfDay } from '../../domain/day/part-of-day';
import { decimalMinutes } from '../../i18n/decimal-time';
import { review } from '../../i18n/en/review';
import { roundedClockFace } from '../../i18n/rounded-clock-face';

const words = review.sheet;

/** Standard deviation from five parts on, the range from two to four, words for one. */
export function SpreadText({ part }: { part: PartOfDay }) {
  const { counted, deviationMs, shortestMs, longestMs } = part;
  if (shortestMs === null || longestMs === null) return <small>{words.noneCounted}</small>;
  if (deviationMs === null) return <small>{words.oneOnly}</small>;
  if (counted < FEW_PARTS) {
    return (
      <>
        {words.fromTo(roundedClockFace(shortestMs), roundedClockFace(longestMs))}
        <small>{words.range}</small>
      </>
    );
  }
  return (
    <>
      {words.minutes(decimalMinutes(deviationMs))}
      <small>{words.deviation}</small>
    </>
  );
}
