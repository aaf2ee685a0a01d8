import { useState } from 'preact/hooks';
import { noteReading } from '../../application/study/note-reading';
import type { LogRecord } from '../../domain/records/log-record';
import type { Reading, Study } from '../../domain/study/study';
import { FOREIGN_ELEMENT } from '../../domain/study/watch-in-hand';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { TextField } from './text-field';

const words = studySheet.reading;

interface Props {
  readonly study: Study;
  readonly reading: Reading;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** The name of a foreign element, or a remark on any other reading; kept when it is said so. */
export function NoteField({ study, reading: { id, row }, onRecord }: Props) {
  const { bench, isReadOnly } = useApp();
  const isForeign = row.elementClass === 'foreign';
  const kept = isForeign
    ? row.element.replace(FOREIGN_ELEMENT, '').replace(/^: /, '')
    : (row.carried.note ?? '');
  const [note, setNote] = useState(kept);
  return (
    <div class="row study-own-cause">
      <TextField label={isForeign ? words.foreignName : words.note} value={note} onInput={setNote} />
      <button
        type="button"
        class="button"
        disabled={isReadOnly || note.trim() === kept}
        onClick={() => onRecord(noteReading(bench, study, id, note))}
      >
        {words.keepNote}
      </button>
    </div>
  );
}
