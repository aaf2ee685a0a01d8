import { RunChart } from '../../../charts/run-chart';
import type { RunStretch } from '../../../domain/weeks/days-run';
import type { RunFigure } from '../../../domain/weeks/run-figures';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { dayParts } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useWidth } from '../use-width';
import { isTime } from './figure-text';

const words = reviewWeeks.steps;

interface Props {
  readonly figure: RunFigure;
  readonly name: string;
  readonly newest: RunStretch | undefined;
}

/** The moving ranges of the newest stretch, beneath its run: for whoever asks where the limits come from. */
export function StepsOfDays({ figure, name, newest }: Props) {
  const { ref, width } = useWidth();
  if (!newest?.limits) return null;
  const { meanMovingRange, movingRangeUpper } = newest.limits;
  const text = (value: number) =>
    isTime(figure) ? roundedClockFace(value * 60_000) : words.points(formatNumber(value, 1));
  const last = newest.steps.length - 1;
  return (
    <details class="review-more">
      <summary>
        <h2>{words.title}</h2>
      </summary>
      <p>{words.says(text(meanMovingRange), text(movingRangeUpper))}</p>
      <figure class="review-picture" ref={ref}>
        {width > 0 && (
          <RunChart
            id="review-steps"
            title={words.pictureTitle(name)}
            description={words.says(text(meanMovingRange), text(movingRangeUpper))}
            width={width}
            height={240}
            points={newest.steps.map(({ day, value }) => ({
              key: day,
              label: dayParts(day).dayOfMonth,
              group: dayParts(day).month,
              value,
              count: '',
              target: null,
              isChosen: false,
              isFew: false,
              isSignal: value > movingRangeUpper,
            }))}
            steps={[]}
            centre={{ value: meanMovingRange, text: words.centre(text(meanMovingRange)) }}
            limits={[
              {
                from: 0,
                to: last,
                lower: 0,
                upper: movingRangeUpper,
                lowerText: '',
                upperText: words.upper(text(movingRangeUpper)),
              },
            ]}
            targetText={null}
            countTitle=""
            axisText={isTime(figure) ? words.axis.time : words.axis.percent}
            tickText={(value) => formatNumber(value, isTime(figure) ? 2 : 0)}
          />
        )}
        <figcaption class="small quiet">{words.note}</figcaption>
      </figure>
    </details>
  );
}
