import type { PartRun } from '../../domain/day/part-run';
import { review } from '../../i18n/en/review';
import { reviewWorking as says } from '../../i18n/en/review-working';
import { formatDay } from '../../i18n/format-day';
import { decimalMinutes } from '../../i18n/format-duration';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { AgainstCell } from './against-cell';
import { Figure } from './figure';
import { meanWorking, shareWorking, spreadWorking } from './part-workings';
import { SpreadText } from './spread-text';
import type { Working } from './working';

const words = review.sheet;

interface Props {
  readonly run: PartRun;
  readonly partCode: string;
  readonly chosen: string;
  readonly open: (working: Working) => void;
  readonly pickDay: (day: string) => void;
}

/** The run of a part as a sheet, newest day first. A day can be touched to open it. */
export function RunSheet({ run, partCode, chosen, open, pickDay }: Props) {
  const { medianMs } = run;
  return (
    <details class="review-more">
      <summary>
        <h3>{review.more.days(run.days.length)}</h3>
      </summary>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col">{review.weeks.day}</th>
            <th scope="col">{words.n}</th>
            <th scope="col">{words.mean}</th>
            <th scope="col">{words.spread}</th>
            <th scope="col">{words.target}</th>
            <th scope="col">{words.share}</th>
          </tr>
        </thead>
        <tbody>
          {[...run.days].reverse().map(({ day, of }) => (
            <tr key={day} class={day === chosen ? 'review-chosen' : ''}>
              <th scope="row" class="words">
                <button
                  type="button"
                  class="review-figure"
                  aria-current={day === chosen ? 'true' : undefined}
                  onClick={() => pickDay(day)}
                >
                  {formatDay(day)}
                </button>
              </th>
              <td>
                {of.n}
                {of.counted < of.n && <small>{words.counted(of.counted)}</small>}
              </td>
              <td>
                <Figure open={open} working={() => meanWorking(of)}>
                  <strong>{roundedClockFace(of.meanMs)}</strong>
                  <small>{words.minutes(decimalMinutes(of.meanMs))}</small>
                </Figure>
              </td>
              <td>
                <Figure open={open} working={() => spreadWorking(of)}>
                  <SpreadText part={of} />
                </Figure>
              </td>
              <td>{of.targetMs === null ? words.none : roundedClockFace(of.targetMs)}</td>
              <td>
                {of.against ? (
                  <Figure open={open} working={() => shareWorking(of.against!, of.partCode)}>
                    <AgainstCell share={of.against.share} />
                  </Figure>
                ) : (
                  words.none
                )}
              </td>
            </tr>
          ))}
        </tbody>
        {medianMs !== null && (
          <tfoot>
            <tr>
              <td>{says.median.title(partCode)}</td>
              <td />
              <td>
                <Figure open={open} working={() => medianWorking(run, partCode, medianMs)}>
                  <strong>{roundedClockFace(medianMs)}</strong>
                  <small>{words.minutes(decimalMinutes(medianMs))}</small>
                </Figure>
              </td>
              <td />
              <td />
              <td />
            </tr>
          </tfoot>
        )}
      </table>
    </details>
  );
}

function medianWorking({ days, steps }: PartRun, partCode: string, medianMs: number): Working {
  const step = steps.at(-1);
  return {
    title: says.median.title(partCode),
    says: step ? `${says.median.says} ${says.median.since(step.revision)}` : says.median.says,
    formula: says.median.formula,
    put: words.minutes(decimalMinutes(medianMs, 3)),
    numbers: {
      title: says.daily,
      values: days.slice(step?.from ?? 0).map(({ of }) => decimalMinutes(of.meanMs, 3)),
    },
  };
}
