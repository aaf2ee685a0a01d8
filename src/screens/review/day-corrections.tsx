import { localDay } from '../../domain/day/local-day';
import type { Correction } from '../../domain/turn/correction-history';
import { review } from '../../i18n/en/review';
import { settle as words } from '../../i18n/en/settle';
import { formatDay } from '../../i18n/format-day';
import { timeOfDay } from '../pace/time-of-day';
import { afterText, stateText } from '../settle/state-text';

/**
 * What was put right, newest first: of what, who, when, why, before and after. What was said at the station is one line:
 * it is the day's own work. Whose turn it was is not shown.
 */
export function DayCorrections({ corrections }: { corrections: readonly Correction[] }) {
  if (corrections.length === 0) return null;
  const { column } = words;
  const atStation = corrections.filter(({ by }) => by === '');
  const later = corrections.filter(({ by }) => by !== '').sort((a, b) => b.at.wallMs - a.at.wallMs);
  return (
    <>
      {atStation.length > 0 && (
        <p class="quiet">
          {review.more.atStation(atStation.length, kindsInWords(atStation.map(({ kind }) => kind)))}
        </p>
      )}
      {later.length > 0 && (
        <details class="review-more">
          <summary>
            <h2>{review.more.corrections(later.length)}</h2>
          </summary>
          <table class="sheet review-sheet">
            <thead>
              <tr>
                {[
                  column.of,
                  column.what,
                  column.before,
                  column.after,
                  column.who,
                  column.why,
                  column.when,
                ].map((name) => (
                  <th scope="col" class="words" key={name}>
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {later.map(({ key, kind, at, about, by, why, before, after }) => (
                <tr key={key}>
                  <td>{about ? timeOfDay(about) : words.states.nothing}</td>
                  <th scope="row" class="words">
                    {words.kinds[kind]}
                  </th>
                  <td class="words">{stateText(before)}</td>
                  <td class="words">{afterText(before, after)}</td>
                  <td class="words">{by}</td>
                  <td class="words">{why || words.states.nothing}</td>
                  <td class="words">
                    {formatDay(localDay(at))}, {timeOfDay(at)}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
    </>
  );
}

/** Each kind once, with how often. */
function kindsInWords(kinds: readonly Correction['kind'][]): string {
  const counts = new Map<Correction['kind'], number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].map(([kind, count]) => review.more.times(count, words.kinds[kind])).join(', ');
}
