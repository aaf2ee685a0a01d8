import { useState } from 'preact/hooks';
import type { DaySummary } from '../../../domain/day/summarise-day';
import type { DayNote } from '../../../domain/weeks/review-book';
import { review } from '../../../i18n/en/review';
import { reviewWeeks } from '../../../i18n/en/review-weeks';
import { formatDay } from '../../../i18n/format-day';
import { useApp } from '../../app';
import { NoteForm } from '../note-form';
import { NoteLine } from '../note-line';

const words = reviewWeeks.notes;

/** What was noted on the days, and a way to note more. */
export function DayNotes({ days, notes }: { days: readonly DaySummary[]; notes: readonly DayNote[] }) {
  const { isReadOnly } = useApp();
  const [day, setDay] = useState(days[0]!.day);
  const oldest = days.at(-1)?.day ?? '';
  const shown = notes.filter((note) => note.day >= oldest).sort((a, b) => (a.day < b.day ? 1 : -1));
  return (
    <section class="stack" aria-labelledby="review-notes-title">
      <h2 id="review-notes-title">{words.title}</h2>
      {shown.length === 0 && <p>{words.none}</p>}
      <ul class="review-list">
        {shown.map((note) => (
          <li key={note.key} class="row">
            <NoteLine note={note}>
              <strong>{formatDay(note.day)}</strong> {note.text}
            </NoteLine>
          </li>
        ))}
      </ul>
      {!isReadOnly && (
        <details class="review-more no-print">
          <summary>
            <h3>{words.write}</h3>
          </summary>
          <NoteForm day={day}>
            <label class="field">
              <span>{review.day}</span>
              <select value={day} onChange={(event) => setDay(event.currentTarget.value)}>
                {days.map((each) => (
                  <option key={each.day} value={each.day}>
                    {formatDay(each.day)}
                  </option>
                ))}
              </select>
            </label>
          </NoteForm>
        </details>
      )}
    </section>
  );
}
