import { useState } from 'preact/hooks';
import type { BackupFault } from '../../application/ports/backup-fault';
import { copiesWords } from '../../i18n/en/copies';
import { backupFaultInWords } from './fault-in-words';

const words = copiesWords.restore;

/** Asks for the pass-phrase of a locked copy, and says when one did not open it. */
export function PhraseAsk({ fault, give }: { fault: BackupFault; give: (phrase: string) => void }) {
  const [phrase, setPhrase] = useState('');
  return (
    <form
      class="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (phrase !== '') give(phrase);
      }}
    >
      <p role="status">{fault.code === 'pass-phrase-wrong' ? backupFaultInWords(fault) : words.locked}</p>
      <div class="row">
        <label class="field">
          <span>{copiesWords.keep.phrase}</span>
          <input
            type="password"
            autocomplete="off"
            value={phrase}
            onInput={(event) => setPhrase(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button">
          {words.open}
        </button>
      </div>
    </form>
  );
}
