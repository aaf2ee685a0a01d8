import type { ComponentChildren } from 'preact';
import { RunChart } from '../../../charts/run-chart';
import type { DaySummary } from '../../../domain/day/summarise-day';
import type { RunStretch } from '../../../domain/weeks/days-run';
import { meanChartAlarms } from '../../../domain/weeks/mean-chart-alarms';
import type { RunFigure, RunValue } from '../../../domain/weeks/run-figures';
import { reviewWeeks as words } from '../../../i18n/en/review-weeks';
import { dayParts, formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { useWidth } from '../use-width';
import { axisText, isTime, valueText } from './figure-text';

interface Change {
  readonly day: string;
  readonly text: string;
}

interface Props {
  readonly figure: RunFigure;
  readonly name: string;
  /** Oldest first, and in stretches between changes. */
  readonly values: readonly RunValue[];
  readonly stretches: readonly RunStretch[];
  readonly days: readonly DaySummary[];
  /** What changed on which day. */
  readonly changes: readonly Change[];
  /** The choice of what to follow: between the sentence and the picture. */
  readonly children: ComponentChildren;
}

/** Narrower than any tablet: a sheet of paper, on which the foot has to find room too. */
const PAPER_PX = 740;

/** A figure day by day: what it says in one sentence, then the run with its limits. */
export function RunOfDays({ figure, name, values, stretches, days, changes, children }: Props) {
  const { ref, width } = useWidth();
  const newest = stretches.at(-1);
  const sentence = newest ? inWords(figure, name, newest, stretches.at(-2)) : words.sentence.none;
  const wolf = meanChartAlarms(days.filter(({ day }) => newest?.points.some((point) => point.day === day)));
  return (
    <section class="stack" aria-labelledby="review-run-title">
      <h1 id="review-run-title">
        <span class="review-for-paper">{periodText(values)}</span>
        {sentence}
      </h1>
      {children}
      {newest && (
        <figure class="review-picture" ref={ref}>
          {width > 0 && (
            <Picture
              figure={figure}
              name={name}
              sentence={sentence}
              values={values}
              stretches={stretches}
              changes={changes}
              width={width}
            />
          )}
          <figcaption class="small quiet">
            {words.legend}
            {words.countLegend[figure === 'first-pass' || typeof figure !== 'string' ? 'done' : 'good']}
            {values.some(({ target }) => target !== null) && words.targetLegend}
            {values.some(isHollow) && words.fewLegend}
            {stretches.length > 1 && words.changeLegend}
          </figcaption>
        </figure>
      )}
      {newest && newest.standing !== 'too-few' && (
        <p class="small">
          {newest.standing === 'firm' ? words.standing.firm : words.standing.provisional(newest.baseline)}{' '}
          {holdsOdd(newest, values) && words.standing.odd}{' '}
          {wolf && wolf.alarms > 0 && words.wolf(wolf.alarms, wolf.days)}
        </p>
      )}
    </section>
  );
}

/** Of the newest stretch; where a change lies before it, since when it runs, and what it was before. */
function inWords(
  figure: RunFigure,
  name: string,
  newest: RunStretch,
  before: RunStretch | undefined,
): string {
  if (!before) return ofStretch(figure, name, newest);
  const since = words.sentence.since(name, formatDay(newest.points[0]!.day, 'short'));
  const [first, last] = [before.points[0]!, before.points.at(-1)!].map(({ day }) => formatDay(day, 'short'));
  return words.sentence.before(
    ofStretch(figure, since, newest),
    first!,
    last!,
    valueText(figure, before.middle),
  );
}

function ofStretch(figure: RunFigure, name: string, { points, limits, middle }: RunStretch): string {
  if (!limits) {
    return words.sentence.tooFew(name, valueText(figure, middle), points.length);
  }
  const out = points.filter(({ signals }) => signals.length > 0).map(({ day }) => formatDay(day, 'short'));
  const centre = valueText(figure, limits.centre);
  return out.length === 0
    ? words.sentence.calm(name, centre)
    : words.sentence.signals(name, centre, out.join(', '));
}

type PictureProps = Pick<Props, 'figure' | 'name' | 'values' | 'stretches' | 'changes'> & {
  readonly sentence: string;
  readonly width: number;
};

function Picture({ figure, name, sentence, values, stretches, changes, width }: PictureProps) {
  const points = stretches.flatMap((stretch) => stretch.points);
  const newest = stretches.at(-1)!;
  const starts = stretches.map((_, place) =>
    stretches.slice(0, place).reduce((sum, stretch) => sum + stretch.points.length, 0),
  );
  const middle = newest.limits?.centre ?? newest.middle;
  const lastTarget = values.at(-1)?.target ?? null;
  const text = (value: number) => valueText(figure, value);
  return (
    <RunChart
      id="review-run-picture"
      title={words.pictureTitle(name)}
      description={words.picture({
        days: points.length,
        first: formatDay(points[0]!.day),
        last: formatDay(points.at(-1)!.day),
        sentence,
      })}
      width={width}
      height={width < PAPER_PX ? 250 : 340}
      points={values.map((each, place) => ({
        key: each.day,
        label: dayParts(each.day).dayOfMonth,
        group: dayParts(each.day).month,
        value: each.value,
        count: String(each.count),
        target: each.target,
        isChosen: false,
        isFew: isHollow(each),
        isSignal: points[place]!.signals.length > 0,
      }))}
      steps={starts.slice(1).map((from) => ({
        from,
        text: changeOn(changes, points[from - 1]!.day, points[from]!.day),
      }))}
      earlier={stretches.slice(0, -1).map(({ limits, middle }) => limits?.centre ?? middle)}
      centre={{
        value: middle,
        text: newest.limits ? words.centre(text(middle)) : words.middle(text(middle)),
      }}
      limits={stretches.flatMap(({ limits, points: own }, place) =>
        limits
          ? [
              {
                from: starts[place]!,
                to: starts[place]! + own.length - 1,
                lower: limits.lower,
                upper: limits.upper,
                lowerText: words.lower(text(limits.lower)),
                upperText: words.upper(text(limits.upper)),
              },
            ]
          : [],
      )}
      targetText={lastTarget === null ? null : words.target(text(lastTarget))}
      countTitle={words.count}
      axisText={axisText(figure)}
      tickText={(value) => formatNumber(value, isTime(figure) ? 2 : 0)}
    />
  );
}

/** The days that are shown, for a sheet that has no other way to say it. */
function periodText(values: readonly RunValue[]): string {
  const [first, last] = [values[0], values.at(-1)];
  if (!first || !last) return '';
  return words.period(first === last ? null : formatDay(first.day, 'short'), formatDay(last.day));
}

/** A day that says less than the others: few parts, or a part of a day. */
function isHollow({ isFew, isPartDay }: RunValue): boolean {
  return isFew || isPartDay;
}

/** Whether the days that the limits come from hold one that stands out, or a part of a day. */
function holdsOdd({ points, baseline }: RunStretch, values: readonly RunValue[]): boolean {
  return points.slice(0, baseline).some(({ day, signals }) => {
    const isBeyond = signals.some(({ rule }) => rule === 'beyond-limits');
    return isBeyond || values.some((value) => value.day === day && value.isPartDay);
  });
}

/** What was noted about the change between two days. */
function changeOn(changes: readonly Change[], before: string, day: string): string {
  return changes.find((change) => change.day > before && change.day <= day)?.text ?? '';
}
