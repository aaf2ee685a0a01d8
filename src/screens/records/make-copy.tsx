import { useState } from 'preact/hooks';
import type { BackupTools } from '../../application/backup/backup-tools';
import { downloadBackup } from '../../application/backup/download-backup';
import { type PreparedBackup, prepareBackup } from '../../application/backup/prepare-backup';
import { problemOf } from '../../application/backup/problem-of';
import { shareBackup } from '../../application/backup/share-backup';
import { copiesWords } from '../../i18n/en/copies';
import { formatSize } from '../../i18n/format-size';
import { useApp } from '../app';
import { BroughtIntoView } from './brought-into-view';
import { LockFields, type PhraseTyped, phraseFault } from './lock-fields';
import { refusalInWords } from './refusal-in-words';

const words = copiesWords.keep;

interface Props {
  readonly copying: () => Promise<BackupTools>;
  /** Begins anew, without the file that was made. */
  readonly again: () => void;
}

/** A copy in two taps: it is written and read back, then handed over. A share sheet opens only right after a tap. */
export function MakeCopy({ copying, again }: Props) {
  const { bench, isReadOnly, secrets } = useApp();
  const [typed, setTyped] = useState<PhraseTyped | null>(null);
  const [ready, setReady] = useState<PreparedBackup | null>(null);
  const [isMaking, setMaking] = useState(false);
  const [told, setTold] = useState('');
  const [isRefused, setRefused] = useState(false);

  const make = async () => {
    const fault = typed ? phraseFault(typed) : '';
    if (fault) return setTold(fault);
    setTold(words.making);
    setRefused(false);
    setMaking(true);
    try {
      if (typed && !(await secrets())) return setTold(words.noCryptography);
      const made = await prepareBackup(bench, await copying(), typed?.phrase);
      if (made.ok) setReady(made);
      else setRefused(true);
      setTold(made.ok ? '' : refusalInWords(made));
    } catch (error) {
      setRefused(true);
      setTold(words.notWritten(problemOf(error)));
    } finally {
      setMaking(false);
    }
  };
  const share = async () => {
    if (ready) setTold(words.outcome[await shareBackup(bench, ready)](ready.file.name));
  };
  const download = () => {
    if (!ready) return;
    downloadBackup(bench, ready);
    setTold(words.downloaded(ready.file.name));
  };

  if (!ready) {
    return (
      <div class="stack">
        <LockFields typed={typed} change={setTyped} />
        <div class="row">
          <button type="button" class="button strong" disabled={isReadOnly || isMaking} onClick={make}>
            {words.make}
          </button>
        </div>
        <p class={isRefused ? 'fault' : ''} role={isRefused ? 'alert' : 'status'}>
          {told}
        </p>
      </div>
    );
  }
  const { file, summary, unsaved, leftOut } = ready;
  const breaks = Math.max(summary.breakCount, leftOut);
  return (
    <BroughtIntoView answer={told}>
      <div class="panel stack">
        <p class="number records-name">
          {words.ready(file.name, summary.records, formatSize(file.bytes))}
          {unsaved > 0 && words.unsaved(unsaved)}
          {breaks > 0 && words.withBreaks(breaks)}
        </p>
        <div class="row">
          {file.canShare && (
            <button type="button" class="button strong" onClick={share}>
              {words.share}
            </button>
          )}
          <button type="button" class={`button ${file.canShare ? '' : 'strong'}`} onClick={download}>
            {words.download}
          </button>
          <button type="button" class="button plain" onClick={again}>
            {told ? words.close : words.cancel}
          </button>
        </div>
        <p class="records-told" role="status">
          {told}
        </p>
      </div>
    </BroughtIntoView>
  );
}
