import { RunChart } from '../../charts/run-chart';
import { FEW_PARTS } from '../../domain/day/few-parts';
import type { PartRun } from '../../domain/day/part-run';
import { review } from '../../i18n/en/review';
import { dayParts, formatDay } from '../../i18n/format-day';
import { formatNumber } from '../../i18n/format-number';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useWidth } from './use-width';

const words = review.weeks;
const MINUTE_MS = 60_000;

/** The run of a part, drawn. */
export function RunPicture({ run, partCode, chosen }: { run: PartRun; partCode: string; chosen: string }) {
  const { ref, width } = useWidth();
  const { days, steps, medianMs } = run;
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last || medianMs === null) return null;
  const median = words.median(roundedClockFace(medianMs));
  const target = last.of.targetMs === null ? null : words.target(roundedClockFace(last.of.targetMs));
  return (
    <figure class="review-picture" ref={ref}>
      {width > 0 && (
        <RunChart
          id="review-run"
          title={words.pictureTitle(partCode)}
          description={words.picture({
            days: days.length,
            first: formatDay(first.day),
            last: formatDay(last.day),
            median: roundedClockFace(medianMs),
            target: target ?? '',
            steps: steps.map(({ from, revision }) => words.stepOn(revision, formatDay(days[from]!.day))),
          })}
          width={width}
          height={340}
          points={days.map(({ day, of }) => ({
            key: day,
            label: dayParts(day).dayOfMonth,
            group: dayParts(day).month,
            value: of.meanMs / MINUTE_MS,
            count: String(of.n),
            target: of.targetMs === null ? null : of.targetMs / MINUTE_MS,
            isChosen: day === chosen,
            isFew: of.counted < FEW_PARTS,
          }))}
          steps={steps.map(({ from, revision }) => ({ from, text: words.step(revision) }))}
          centre={{ value: medianMs / MINUTE_MS, text: median }}
          targetText={target}
          countTitle={words.count}
          axisText={words.axis}
          tickText={(minutes, decimals = 2) => formatNumber(minutes, decimals)}
        />
      )}
      <figcaption class="small quiet">
        {words.legend}
        {days.some(({ of }) => of.counted < FEW_PARTS) && words.fewLegend}
        {steps.length > 0 && words.stepLegend}
      </figcaption>
    </figure>
  );
}
