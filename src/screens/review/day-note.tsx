import { useState } from 'preact/hooks';
import type { DayNote as Note } from '../../domain/weeks/review-book';
import { review } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { NoteForm } from './note-form';
import { NoteLine } from './note-line';

const words = review.note;

/** What was noted on the day, where it is read, and that the work is another since; and a way to note something. */
export function DayNote({ day, notes }: { day: string; notes: readonly Note[] }) {
  const { isReadOnly } = useApp();
  const [isWriting, setWriting] = useState(false);
  const own = notes.filter((each) => each.day === day);
  const [changed] = notes
    .filter((each) => each.isChange && each.day > day)
    .sort((a, b) => (a.day < b.day ? -1 : 1));
  return (
    <div class={isWriting ? 'stack' : 'row'}>
      {changed && <p>{words.before(formatDay(changed.day), changed.text)}</p>}
      {own.map((note) => (
        <p key={note.key} class="row">
          <NoteLine note={note}>
            <strong>{note.text}</strong>
          </NoteLine>
        </p>
      ))}
      {isWriting ? (
        <NoteForm day={day} done={() => setWriting(false)} close={() => setWriting(false)} />
      ) : (
        <div class="review-note-open no-print">
          <button type="button" class="button plain" disabled={isReadOnly} onClick={() => setWriting(true)}>
            {words.write}
          </button>
        </div>
      )}
    </div>
  );
}
