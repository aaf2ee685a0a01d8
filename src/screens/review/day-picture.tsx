import { type PartLine, PartTargetChart } from '../../charts/part-target-chart';
import type { AgainstTarget } from '../../domain/day/against-target';
import { FEW_PARTS } from '../../domain/day/few-parts';
import type { PartOfDay } from '../../domain/day/part-of-day';
import type { DayReview } from '../../domain/day/review-day';
import { decimalMinutes } from '../../i18n/decimal-time';
import { review as words } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { formatNumber } from '../../i18n/format-number';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { againstTargetText, offText } from './against-target-text';
import { sideOfTarget } from './side-of-target';
import { useWidth } from './use-width';

const MINUTE_MS = 60_000;

type PartWithMean = PartOfDay & { readonly meanMs: number };

/** A part of which none counts has no place in the picture; the sheet below names it. */
function hasMean(part: PartOfDay): part is PartWithMean {
  return part.meanMs !== null;
}

/** The day's parts beside their targets: the first thing to see. */
export function DayPicture({ day }: { day: DayReview }) {
  const { ref, width } = useWidth();
  const parts = day.parts.filter(hasMean);
  const lines = parts.map(partLine);
  return (
    <figure class="review-picture" ref={ref}>
      {width > 0 && (
        <PartTargetChart
          id="review-day-picture"
          title={words.pictureTitle(formatDay(day.day))}
          description={parts.map((part, place) => lineInWords(part, lines[place]!)).join(' ')}
          width={width}
          lines={lines}
          axisText={words.picture.axis}
          tickText={formatNumber}
        />
      )}
      <figcaption class="small quiet">
        {words.picture.legend}
        {parts.some(({ counted }) => counted < FEW_PARTS) && words.picture.fewLegend}
        {parts.some(({ against }) => against && against.good < against.n) && words.picture.scrapLegend}
      </figcaption>
    </figure>
  );
}

function partLine(part: PartWithMean): PartLine {
  const { n, counted, meanMs, deviationMs, shortestMs, longestMs, netTimesMs, against } = part;
  const isFew = counted < FEW_PARTS;
  const low = isFew ? (shortestMs ?? meanMs) : Math.max(0, meanMs - (deviationMs ?? 0));
  const high = isFew ? (longestMs ?? meanMs) : meanMs + (deviationMs ?? 0);
  const side = against ? sideOfTarget(against.share) : 'level';
  const { arrow, word } = words.againstShort[side];
  return {
    key: part.part,
    label: part.partCode,
    note: words.picture.note(n, counted),
    mean: meanMs / MINUTE_MS,
    spread: counted > 1 ? { low: low / MINUTE_MS, high: high / MINUTE_MS } : null,
    dots: isFew ? netTimesMs.map((ms) => ms / MINUTE_MS) : [],
    target: against && targetMark(part, against),
    side,
    verdict: against ? words.picture.verdict(arrow, offText(against.share), word) : words.picture.noTarget,
    verdictNote: words.picture.meanNote(
      roundedClockFace(meanMs),
      decimalMinutes(meanMs),
      against ? against.n - against.good : 0,
    ),
  };
}

/** One target stands where it is; of a target that changed, the mean of those the good parts carried. */
function targetMark({ targetChanged }: PartOfDay, { targetMs, good }: AgainstTarget): PartLine['target'] {
  const carriedMs = targetMs / good;
  const word = targetChanged ? words.picture.meanTarget : words.picture.target;
  return { value: carriedMs / MINUTE_MS, text: word(roundedClockFace(carriedMs)) };
}

function lineInWords({ partCode, n, meanMs, against }: PartWithMean, { target }: PartLine): string {
  return words.picture.line({
    part: partCode,
    n,
    mean: roundedClockFace(meanMs),
    target: target?.text ?? words.picture.noTarget,
    verdict: against ? againstTargetText(against.share) : words.picture.noTarget,
  });
}
