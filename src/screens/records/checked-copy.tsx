import { useEffect, useState } from 'preact/hooks';
import type { BackupTools } from '../../application/backup/backup-tools';
import { settleRestored } from '../../application/backup/count-missing';
import { planRestore, type RestorePlan } from '../../application/backup/plan-restore';
import { problemOf } from '../../application/backup/problem-of';
import { restoreBackup } from '../../application/backup/restore-backup';
import type { BackupFault } from '../../application/ports/backup-fault';
import type { BackupSource } from '../../application/ports/backup-format';
import { copiesWords } from '../../i18n/en/copies';
import { useApp } from '../app';
import { BroughtIntoView } from './brought-into-view';
import { backupFaultInWords } from './fault-in-words';
import { PhraseAsk } from './phrase-ask';
import { RestorePlanSheet } from './restore-plan-sheet';
import { restored } from './restored';

const words = copiesWords.restore;

interface Props {
  readonly source: BackupSource;
  readonly name: string;
  readonly copying: () => Promise<BackupTools>;
  readonly leave: () => void;
}

type Looked =
  | { readonly is: 'reading' | 'taking' }
  | { readonly is: 'refused'; readonly sentence: string }
  | { readonly is: 'locked'; readonly fault: BackupFault }
  | { readonly is: 'sound'; readonly plan: RestorePlan };

/** What a copy holds and what of it is new; nothing is written before somebody says so. */
export function CheckedCopy({ source, name, copying, leave }: Props) {
  const app = useApp();
  const [phrase, setPhrase] = useState<string | undefined>();
  const [looked, setLooked] = useState<Looked>({ is: 'reading' });

  const look = async (passphrase?: string) => {
    setLooked({ is: 'reading' });
    setPhrase(passphrase);
    try {
      const found = await planRestore(app.bench.log, await copying(), source, passphrase);
      if (found.ok) return setLooked({ is: 'sound', plan: found.plan });
      const { fault } = found;
      const isLocked = fault.code === 'pass-phrase-needed' || fault.code === 'pass-phrase-wrong';
      if (isLocked) setLooked({ is: 'locked', fault });
      else setLooked({ is: 'refused', sentence: words.refused(backupFaultInWords(fault)) });
    } catch (error) {
      setLooked({ is: 'refused', sentence: words.unreadable(problemOf(error)) });
    }
  };
  // A new choice is a new component: it looks once.
  useEffect(() => {
    look();
  }, []);

  const take = async () => {
    if (looked.is !== 'sound') return;
    setLooked({ is: 'taking' });
    const outcome = await restoreBackup(app.bench, await copying(), source, phrase);
    if ('cameIn' in outcome) settleRestored(outcome.cameIn, await copying());
    restored.value = outcome;
    leave();
    if (outcome.ok || outcome.reason === 'cut-short') await app.reopen();
  };
  return (
    <BroughtIntoView answer={looked.is}>
      <div class="panel stack">
        <h3 class="records-name">{name}</h3>
        <div role="status">
          {looked.is === 'reading' && <p>{words.reading}</p>}
          {looked.is === 'taking' && <p>{words.taking}</p>}
        </div>
        {looked.is === 'refused' && (
          <p class="fault" role="alert">
            {looked.sentence}
          </p>
        )}
        {looked.is === 'locked' && <PhraseAsk fault={looked.fault} give={look} />}
        {looked.is === 'sound' && (
          <RestorePlanSheet plan={looked.plan} nowMs={app.bench.clock.now().wallMs} />
        )}
        <div class="row">
          {looked.is === 'sound' && looked.plan.clashCount === 0 && looked.plan.added > 0 && (
            <button type="button" class="button strong" onClick={take}>
              {words.take}
            </button>
          )}
          {looked.is !== 'taking' && (
            <button type="button" class="button" onClick={leave}>
              {words.leave}
            </button>
          )}
        </div>
      </div>
    </BroughtIntoView>
  );
}
