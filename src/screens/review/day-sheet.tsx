import type { PartOfDay } from '../../domain/day/part-of-day';
import type { DayReview } from '../../domain/day/review-day';
import { decimalMinutes } from '../../i18n/decimal-time';
import { review } from '../../i18n/en/review';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { AgainstCell } from './against-cell';
import { Figure } from './figure';
import {
  countWorking,
  meanWorking,
  outcomeWorking,
  shareWorking,
  spreadWorking,
  targetWorking,
} from './part-workings';
import { SpreadText } from './spread-text';
import type { Working } from './working';

const words = review.sheet;

interface Props {
  readonly day: DayReview;
  readonly open: (working: Working) => void;
}

/** The ruled sheet of a day: one line a part, and the sum of all. */
export function DaySheet({ day, open }: Props) {
  return (
    <section class="stack" aria-labelledby="review-sheet-title">
      <div class="row spread">
        <h2 id="review-sheet-title">{words.title}</h2>
        <p class="small quiet no-print">{words.hint}</p>
      </div>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col">{words.part}</th>
            <th scope="col">{words.n}</th>
            <th scope="col">{words.mean}</th>
            <th scope="col">{words.spread}</th>
            <th scope="col">{words.target}</th>
            <th scope="col">{words.share}</th>
            <th scope="col">{words.good}</th>
            <th scope="col">{words.rework}</th>
            <th scope="col">{words.scrap}</th>
          </tr>
        </thead>
        <tbody>
          {day.parts.map((part) => (
            <Line key={part.part} part={part} open={open} />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.all}</td>
            <td>
              {day.done}
              {day.counted < day.done && <small>{words.counted(day.counted)}</small>}
            </td>
            <td />
            <td />
            <td />
            <td>
              {day.against && (
                <Figure open={open} working={() => shareWorking(day.against!)}>
                  <AgainstCell share={day.against.share} />
                </Figure>
              )}
            </td>
            <td>{day.good - day.rework}</td>
            <td>{day.rework}</td>
            <td>{day.scrap}</td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function Line({ part, open }: { part: PartOfDay; open: Props['open'] }) {
  const { partCode, n, counted, meanMs, targetMs, targetChanged, against, good, rework, scrap } = part;
  return (
    <tr>
      <th scope="row" class="words">
        {partCode}
      </th>
      <td>
        <Figure open={open} working={() => countWorking(part)}>
          {n}
          {counted < n && <small>{words.counted(counted)}</small>}
        </Figure>
      </td>
      <td>
        <Figure open={open} working={() => meanWorking(part)}>
          <strong>{meanMs === null ? words.none : roundedClockFace(meanMs)}</strong>
          {meanMs !== null && <small>{words.minutes(decimalMinutes(meanMs))}</small>}
        </Figure>
      </td>
      <td>
        <Figure open={open} working={() => spreadWorking(part)}>
          <SpreadText part={part} />
        </Figure>
      </td>
      <td>
        <Figure open={open} working={() => targetWorking(part)}>
          {targetMs === null ? words.none : roundedClockFace(targetMs)}
          {targetMs !== null && (
            <small>{targetChanged ? words.changed : words.minutes(decimalMinutes(targetMs))}</small>
          )}
        </Figure>
      </td>
      <td>
        {against ? (
          <Figure open={open} working={() => shareWorking(against, partCode)}>
            <AgainstCell share={against.share} />
          </Figure>
        ) : (
          words.none
        )}
      </td>
      {[good, rework, scrap].map((count, place) => (
        <td key={`${place}`}>
          <Figure open={open} working={() => outcomeWorking(part)}>
            {count}
          </Figure>
        </td>
      ))}
    </tr>
  );
}
