import { useState } from 'preact/hooks';
import { noteTurn } from '../../application/turn/note-turn';
import type { Turn } from '../../domain/turn/turn';
import { ownRecord as own } from '../../i18n/en/own-record';
import { useApp } from '../app';

/** A place for the operator's own words. Kept when the field is left too, so that the button need not be remembered. */
export function OwnNote({ turn }: { turn: Turn }) {
  const { bench, isReadOnly } = useApp();
  const [typed, setTyped] = useState(turn.note);
  const isKept = turn.note !== '' && typed.trim() === turn.note;
  return (
    <section class="stack pace-own-wide">
      <h2 id="pace-own-note">{own.noteTitle}</h2>
      <div class="field">
        <textarea
          aria-labelledby="pace-own-note"
          rows={2}
          maxLength={500}
          value={typed}
          disabled={isReadOnly}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onBlur={() => noteTurn(bench, turn, typed)}
        />
      </div>
      <div class="row">
        <button
          type="button"
          class="button"
          disabled={isReadOnly || typed.trim() === turn.note}
          onClick={() => noteTurn(bench, turn, typed)}
        >
          {own.noteKeep}
        </button>
        <p class="quiet small" role="status">
          {isKept ? `✓ ${own.noteKept}` : own.noteHint}
        </p>
      </div>
    </section>
  );
}
