import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { noteDay } from '../../application/review/note-day';
import { review } from '../../i18n/en/review';
import { useApp } from '../app';

const words = review.note;

interface Props {
  readonly day: string;
  /** Before the fields: which day it is. */
  readonly children?: ComponentChildren;
  /** After the note was kept. */
  done?(): void;
  /** A way out, where the form can be closed. */
  close?(): void;
}

/** A note on a day, and whether the work is another from it on. */
export function NoteForm({ day, children, done, close }: Props) {
  const { bench } = useApp();
  const [text, setText] = useState('');
  const [by, setBy] = useState('');
  const [isChange, setIsChange] = useState(false);
  const save = (event: Event) => {
    event.preventDefault();
    noteDay(bench, { day, text, isChange, by });
    setText('');
    setIsChange(false);
    done?.();
  };
  return (
    <form class={close ? 'panel stack review-form no-print' : 'stack review-form'} onSubmit={save}>
      {children}
      <label class="field">
        <span>{words.text}</span>
        <input
          value={text}
          maxLength={200}
          ref={(field) => {
            if (close && field && text === '') field.focus();
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
        {close && (
          <button type="button" class="button" onClick={close}>
            {words.cancel}
          </button>
        )}
      </div>
    </form>
  );
}
