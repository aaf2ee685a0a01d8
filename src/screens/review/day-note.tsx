import { useState } from 'preact/hooks';
import { noteDay } from '../../application/review/note-day';
import { removeDayNote } from '../../application/review/remove-day-note';
import type { DayNote as Note } from '../../domain/weeks/review-book';
import { review } from '../../i18n/en/review';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { AskedButton } from './asked-button';

const words = review.note;

/** What was noted on the day, where it is read, and that the work is another since;  and a way to note something. */
export function DayNote({ day, notes }: { day: string; notes: readonly Note[] }) {
  const { bench, isReadOnly } = useApp();
  const [isWriting, setWriting] = useState(false);
  const own = notes.filter((each) => each.day === day);
  const [changed] = notes
    .filter((each) => each.isChange && each.day > day)
    .sort((a, b) => (a.day < b.day ? -1 : 1));
  return (
    <div class={isWriting ? 'stack' : 'row'}>
      {changed && <p>{words.before(formatDay(changed.day), changed.text)}</p>}
      {own.map(({ key, text, isChange, by }) => (
        <p key={key} class="row">
          <span>
            <strong>{text}</strong>
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
        </p>
      ))}
      {isWriting ? (
        <NoteForm day={day} close={() => setWriting(false)} />
      ) : (
        <div class="no-print">
          <button type="button" class="button plain" disabled={isReadOnly} onClick={() => setWriting(true)}>
            {words.write}
          </button>
        </div>
      )}
    </div>
  );
}

function NoteForm({ day, close }: { day: string; close(): void }) {
  const { bench } = useApp();
  const [text, setText] = useState('');
  const [by, setBy] = useState('');
  const [isChange, setIsChange] = useState(false);
  const save = (event: Event) => {
    event.preventDefault();
    noteDay(bench, { day, text, isChange, by });
    close();
  };
  return (
    <form class="panel stack review-form no-print" onSubmit={save}>
      <label class="field">
        <span>{words.text}</span>
        <input
          value={text}
          maxLength={200}
          ref={(field) => {
            if (field && text === '') field.focus();
          }}
          onInput={(event) => setText(event.currentTarget.value)}
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
        <button type="button" class="button" onClick={close}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}
