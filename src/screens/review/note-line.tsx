import type { ComponentChildren } from 'preact';
import { removeDayNote } from '../../application/review/remove-day-note';
import type { DayNote } from '../../domain/weeks/review-book';
import { review } from '../../i18n/en/review';
import { useApp } from '../app';
import { AskedButton } from './asked-button';

/** A note with who wrote it, and the way to take it away. */
export function NoteLine({ note, children }: { note: DayNote; children: ComponentChildren }) {
  const { bench, isReadOnly } = useApp();
  const { key, text, isChange, by } = note;
  return (
    <>
      <span>
        {children}
        <small class="quiet"> {[isChange && review.note.changed, by].filter(Boolean).join(', ')}</small>
      </span>
      {!isReadOnly && (
        <AskedButton
          label={review.takeAway.away}
          of={text}
          question={review.takeAway[isChange ? 'change' : 'note']}
          act={() => removeDayNote(bench, key, '')}
        />
      )}
    </>
  );
}
