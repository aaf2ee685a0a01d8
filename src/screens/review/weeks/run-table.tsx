import type { RunPoint, RunStretch } from '../../../domain/weeks/days-run';
import type { DayNote } from '../../../domain/weeks/review-book';
import type { RunFigure, RunValue } from '../../../domain/weeks/run-figures';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';
import { isTime, valueText } from './figure-text';

const words = reviewWeeks.sheet;

interface Props {
  readonly figure: RunFigure;
  readonly values: readonly RunValue[];
  readonly stretches: readonly RunStretch[];
  readonly notes: readonly DayNote[];
}

/** The run as a table, newest day first. A day can be touched to open it. */
export function RunTable({ figure, values, stretches, notes }: Props) {
  const app = useApp();
  const points = new Map(stretches.flatMap((stretch) => stretch.points).map((point) => [point.day, point]));
  if (values.length === 0) return null;
  return (
    <details class="review-more">
      <summary>
        <h2>{words.title(values.length)}</h2>
      </summary>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col">{words.day}</th>
            <th scope="col">{words.value}</th>
            <th scope="col">{words.n}</th>
            <th scope="col" class="words">
              {words.said}
            </th>
          </tr>
        </thead>
        <tbody>
          {[...values].reverse().map(({ day, value, count, isPartDay }) => (
            <tr key={day}>
              <th scope="row" class="words">
                <button type="button" class="review-figure" onClick={() => app.go('review', day)}>
                  {formatDay(day)}
                </button>
              </th>
              <td>
                <strong>{valueText(figure, value)}</strong>
                {isTime(figure) && <small>{reviewWeeks.value.decimal(formatNumber(value, 2))}</small>}
              </td>
              <td>{count}</td>
              <td class="words">
                {[
                  ...signalWords(points.get(day)),
                  ...(isPartDay ? [words.partDay] : []),
                  ...notes.filter((note) => note.day === day).map(({ text }) => text),
                ].join('. ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function signalWords(point: RunPoint | undefined): string[] {
  return (point?.signals ?? []).flatMap(({ rule, side }) =>
    rule === 'beyond-limits' || rule === 'eight-on-one-side' ? [words.signals[rule][side]] : [],
  );
}
