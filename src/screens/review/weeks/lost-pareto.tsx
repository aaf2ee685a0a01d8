import { useState } from 'preact/hooks';
import { AmountBar } from '../../../charts/amount-bar';
import { addedUp } from '../../../domain/day/lost-cost';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { NOT_STATED } from '../../../domain/turn/turn';
import { mondayOf } from '../../../domain/weeks/monday-of';
import { review } from '../../../i18n/en/review';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import type { PlaceProps } from '../place-props';
import { reasonName } from '../reason-name';
import { sinceLastChange } from '../since-last-change';
import { roundedCosts } from './rounded-costs';

const words = reviewWeeks.lost;
const BAR_PX = 130;

/**
 * Lost time over the days since the last change, or over one week of those that were read: dearest first with what
 * comes together so far; what nobody stated last.
 */
export function LostPareto({ days: read, book }: Pick<PlaceProps, 'days' | 'book'>) {
  const [wanted, setWanted] = useState('');
  const weeks = [...new Set(read.map(({ day }) => mondayOf(day)))];
  const recent = sinceLastChange(read, book);
  // Days that are read anew may hold another week.
  const week = weeks.includes(wanted) ? wanted : '';
  const days: readonly DaySummary[] = week ? read.filter(({ day }) => mondayOf(day) === week) : recent;
  const lost = addedUp(days);
  const { costs, lengths } = roundedCosts(lost);
  const cost = sum(costs);
  const unknown = sum(days.map(({ lostUnknown }) => lostUnknown));
  const [first] = lost;
  const minutes = (value: number) => reviewWeeks.value.decimal(formatNumber(value, 1));
  return (
    <section class="stack" aria-labelledby="review-pareto-title">
      <h2 id="review-pareto-title">{words.title}</h2>
      <label class="field no-print">
        <span class="visually-hidden">{words.which}</span>
        <select value={week} onChange={(event) => setWanted(event.currentTarget.value)}>
          <option value="">{words.since(formatDay(recent.at(-1)!.day))}</option>
          {weeks.map((monday) => (
            <option key={monday} value={monday}>
              {words.week(formatDay(monday))}
            </option>
          ))}
        </select>
      </label>
      {!first ? (
        <p>{unknown === 0 ? words.none : review.lost.unknown(unknown)}</p>
      ) : (
        <>
          {first.reason !== NOT_STATED && (
            <p>
              {words.sentence(
                reasonName(first),
                minutes(costs[0]!),
                formatNumber((100 * costs[0]!) / (cost || 1)),
                minutes(cost),
                formatDay(days.at(-1)!.day),
                week ? formatDay(days[0]!.day) : null,
              )}
            </p>
          )}
          <table class="sheet review-sheet">
            <thead>
              <tr>
                <th scope="col">{review.lost.reason}</th>
                <th scope="col" class="words" colSpan={2}>
                  {words.cost}
                </th>
                <th scope="col">{words.soFar}</th>
                <th scope="col">{words.recorded}</th>
                <th scope="col">{review.lost.count}</th>
              </tr>
            </thead>
            <tbody>
              {lost.map(({ reason, label, count }, place) => (
                <tr key={reason}>
                  <th scope="row" class="words">
                    {reasonName({ reason, label })}
                  </th>
                  <td class="words review-bar">
                    <AmountBar
                      amount={costs[place]!}
                      most={Math.max(...costs)}
                      width={BAR_PX}
                      isNeutral={reason === NOT_STATED}
                    />
                  </td>
                  <td>{minutes(costs[place]!)}</td>
                  <td>{formatNumber((100 * sum(costs.slice(0, place + 1))) / (cost || 1))} %</td>
                  <td>{minutes(lengths[place]!)}</td>
                  <td>{count}</td>
                </tr>
              ))}
            </tbody>
            <tfoot>
              <tr>
                <td>{review.lost.all}</td>
                <td />
                <td>{minutes(cost)}</td>
                <td />
                <td>{minutes(sum(lengths))}</td>
                <td>{lost.reduce((total, { count }) => total + count, 0)}</td>
              </tr>
            </tfoot>
          </table>
          {unknown > 0 && <p>{review.lost.unknownToo(unknown)}</p>}
          <p class="small quiet">{words.note}</p>
        </>
      )}
    </section>
  );
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
