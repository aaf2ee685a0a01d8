import { useState } from 'preact/hooks';
import { exclusionCauses } from '../../domain/study/exclusion-cause';
import { studySheet } from '../../i18n/en/study-sheet';
import { causeWords } from './cause-words';
import { TextField } from './text-field';

const words = studySheet.reading;

/** A cause of the sheet, or the engineer's own words. Without one nothing is left out. */
export function CauseChooser({ onChoose }: { onChoose: (cause: string) => void }) {
  const [own, setOwn] = useState('');
  return (
    <div class="stack">
      <strong>{words.leaveOut}</strong>
      <div class="choices">
        {exclusionCauses.map((cause) => (
          <button key={cause} type="button" class="choice" onClick={() => onChoose(cause)}>
            {causeWords(cause)}
          </button>
        ))}
      </div>
      <div class="row study-own-cause">
        <TextField label={words.ownWords} value={own} onInput={setOwn} />
        <button type="button" class="button" disabled={own.trim() === ''} onClick={() => onChoose(own)}>
          {words.leaveOutOwn}
        </button>
      </div>
      <p class="quiet small">{words.causeNeeded}</p>
    </div>
  );
}
