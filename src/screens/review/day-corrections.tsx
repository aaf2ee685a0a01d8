import { localDay } from '../../domain/day/local-day';
import type { CorrectedState, Correction } from '../../domain/turn/correction-history';
import { wholeSeconds } from '../../domain/turn/whole-seconds';
import { ledger } from '../../i18n/en/ledger';
import { review } from '../../i18n/en/review';
import { settle as words } from '../../i18n/en/settle';
import { formatDay } from '../../i18n/format-day';
import { clockFace } from '../../i18n/format-duration';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { timeOfDay } from '../pace/time-of-day';

/** What was put right: who, when, why, before and after. Whose turn it was is not shown. */
export function DayCorrections({ corrections }: { corrections: readonly Correction[] }) {
  if (corrections.length === 0) return null;
  const { column } = words;
  return (
    <details class="review-more">
      <summary>
        <h2>{review.more.corrections(corrections.length)}</h2>
      </summary>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            {[column.what, column.when, column.who, column.why, column.before, column.after].map((name) => (
              <th scope="col" class="words" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {corrections.map(({ key, kind, at, by, why, before, after }) => (
            <tr key={key}>
              <th scope="row" class="words">
                {words.kinds[kind]}
              </th>
              <td class="words">
                {formatDay(localDay(at))}, {timeOfDay(at)}
              </td>
              <td class="words">{by || words.saidAtStation}</td>
              <td class="words">{why || words.states.nothing}</td>
              <td class="words">{stateText(before)}</td>
              <td class="words">{stateText(after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function stateText(state: CorrectedState): string {
  switch (state.what) {
    case 'count':
      return words.states.count(state.done, state.counted);
    case 'person':
      return words.states.person;
    case 'parts':
      return state.parts
        .map(({ partCode, targetMs }) =>
          targetMs === null ? partCode : `${partCode} ${roundedClockFace(targetMs)}`,
        )
        .join(', ');
    case 'time':
      return state.spans
        .map(({ category, ...span }) =>
          words.states.span(ledger.names[category], clockFace(wholeSeconds(span) * 1_000)),
        )
        .join(', ');
  }
}
