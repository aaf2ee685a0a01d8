import { useState } from 'preact/hooks';
import { noteDay } from '../../../application/review/note-day';
import { removeDayNote } from '../../../application/review/remove-day-note';
import type { DaySummary } from '../../../domain/day/summarise-day';
import type { DayNote } from '../../../domain/weeks/review-book';
import { review } from '../../../i18n/en/review';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { formatDay } from '../../../i18n/format-day';
import { useApp } from '../../app';
import { AskedButton } from '../asked-button';

const words = reviewWeeks.notes;

/** What was noted on the days, and a way to note more. */
export function DayNotes({ days, notes }: { days: readonly DaySummary[]; notes: readonly DayNote[] }) {
  const { bench, isReadOnly } = useApp();
  const oldest = days.at(-1)?.day ?? '';
  const shown = notes.filter(({ day }) => day >= oldest).sort((a, b) => (a.day < b.day ? 1 : -1));
  return (
    <section class="stack" aria-labelledby="review-notes-title">
      <h2 id="review-notes-title">{words.title}</h2>
      {shown.length === 0 && <p>{words.none}</p>}
      <ul class="review-list">
        {shown.map(({ key, day, text, isChange, by }) => (
          <li key={key} class="row">
            <span>
              <strong>{formatDay(day)}</strong> {text}
              <small class="quiet"> {[isChange && words.changed, by].filter(Boolean).join(', ')}</small>
            </span>
            {!isReadOnly && (
              <AskedButton
                label={review.takeAway.away}
                of={text}
                question={review.takeAway[isChange ? 'change' : 'note']}
                act={() => removeDayNote(bench, key, '')}
              />
            )}
          </li>
        ))}
      </ul>
      {!isReadOnly && <NoteForm days={days} />}
    </section>
  );
}

function NoteForm({ days }: { days: readonly DaySummary[] }) {
  const { bench } = useApp();
  const [day, setDay] = useState(days[0]!.day);
  const [text, setText] = useState('');
  const [by, setBy] = useState('');
  const [isChange, setIsChange] = useState(false);
  const save = (event: Event) => {
    event.preventDefault();
    noteDay(bench, { day, text, isChange, by });
    setText('');
    setIsChange(false);
  };
  return (
    <details class="review-more no-print">
      <summary>
        <h3>{words.write}</h3>
      </summary>
      <form class="stack review-form" onSubmit={save}>
        <label class="field">
          <span>{words.day}</span>
          <select value={day} onChange={(event) => setDay(event.currentTarget.value)}>
            {days.map((each) => (
              <option key={each.day} value={each.day}>
                {formatDay(each.day)}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{words.text}</span>
          <input
            value={text}
            maxLength={200}
            onInput={(event) => setText(event.currentTarget.value)}
            required
          />
        </label>
        <label class="review-check">
          <input
            type="checkbox"
            checked={isChange}
            onChange={(event) => setIsChange(event.currentTarget.checked)}
          />
          <span>{words.isChange}</span>
        </label>
        <label class="field">
          <span>{words.by}</span>
          <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
        </label>
        <div class="row">
          <button type="submit" class="button strong" disabled={text.trim() === ''}>
            {words.save}
          </button>
        </div>
      </form>
    </details>
  );
}
