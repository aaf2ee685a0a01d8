import { useState } from 'preact/hooks';
import { type LookAtPeople, lookAtPeople } from '../../../application/review/look-at-people';
import { localDay } from '../../../domain/day/local-day';
import type { DaySummary } from '../../../domain/day/summarise-day';
import type { ReviewBook } from '../../../domain/weeks/review-book';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { formatDay } from '../../../i18n/format-day';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';
import { PinAsk } from '../../latch/pin-ask';
import { useLatch } from '../../latch/use-latch';

const words = reviewWeeks.people;

/** Closed, and empty until somebody says why: whoever looks is on record. */
export function PeopleFigures({ days, book }: { days: readonly DaySummary[]; book: ReviewBook }) {
  const { bench, isReadOnly } = useApp();
  const [purpose, setPurpose] = useState('');
  const [by, setBy] = useState('');
  const [shown, setShown] = useState<(LookAtPeople & { purpose: string }) | null>(null);
  const isShut = useLatch();
  const [newest, oldest] = [days[0]!.day, days.at(-1)!.day];
  if (isReadOnly) return null;
  const show = async (event: Event) => {
    event.preventDefault();
    setShown({ ...(await lookAtPeople(bench, { from: oldest, to: newest }, { purpose, by })), purpose });
  };
  return (
    <details class="review-more no-print">
      <summary>
        <h2>{words.title}</h2>
      </summary>
      <div class="stack">
        <p>{words.note}</p>
        {shown ? (
          <>
            <p>{words.shown(shown.purpose)}</p>
            <p>{words.period(formatDay(shown.from), formatDay(shown.to), shown.isCut)}</p>
            <PeopleTable figures={shown.figures} />
            <div class="row">
              <button type="button" class="button" onClick={() => setShown(null)}>
                {words.hide}
              </button>
            </div>
          </>
        ) : (
          <>
            <PinAsk />
            <form class="stack review-form" onSubmit={show}>
              <label class="field">
                <span>{words.purpose}</span>
                <input
                  value={purpose}
                  maxLength={200}
                  onInput={(event) => setPurpose(event.currentTarget.value)}
                />
              </label>
              <label class="field">
                <span>{words.by}</span>
                <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
              </label>
              <div class="row">
                <button
                  type="submit"
                  class="button"
                  disabled={isShut || purpose.trim() === '' || by.trim() === ''}
                >
                  {words.show}
                </button>
              </div>
            </form>
          </>
        )}
        {book.looksAtPeople.length > 0 && (
          <>
            <h3>{words.looks(book.looksAtPeople.length)}</h3>
            <ul class="review-list">
              {[...book.looksAtPeople].reverse().map(({ key, at, by: who, purpose: why }) => (
                <li key={key}>{words.look(formatDay(localDay(at)), who, why)}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </details>
  );
}

function PeopleTable({ figures }: Pick<LookAtPeople, 'figures'>) {
  return (
    <table class="sheet review-sheet">
      <thead>
        <tr>
          <th scope="col">{words.person}</th>
          <th scope="col">{words.dayCount}</th>
          <th scope="col">{words.partCount}</th>
          <th scope="col">{words.share}</th>
        </tr>
      </thead>
      <tbody>
        {figures.map(({ person, days, parts, share, halfWidth }) => (
          <tr key={person}>
            <th scope="row" class="words">
              {person}
            </th>
            <td>{days}</td>
            <td>{parts}</td>
            <td>
              {share === null
                ? words.tooFew
                : words.value(formatNumber(100 * share, 1), formatNumber(100 * halfWidth!, 1))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
