import type { RestoreOutcome } from '../../application/backup/restore-backup';
import { copiesWords } from '../../i18n/en/copies';
import { BroughtIntoView } from './brought-into-view';
import { backupFaultInWords } from './fault-in-words';
import { restored } from './restored';

const words = copiesWords.restore;

/** What the last restore came to. */
export function RestoreOutcomeNote() {
  const outcome = restored.value;
  return (
    <div role="status">
      {outcome && (
        <BroughtIntoView answer={outcome}>
          <p class={outcome.ok ? 'records-told' : 'fault'}>{said(outcome)}</p>
        </BroughtIntoView>
      )}
      {outcome?.ok && outcome.overlaps === null && <p>{copiesWords.overlaps.unknown}</p>}
    </div>
  );
}

function said(outcome: RestoreOutcome): string {
  if (outcome.ok) return words.done(outcome.plan.added);
  switch (outcome.reason) {
    case 'refused':
      return words.refused(backupFaultInWords(outcome.fault));
    case 'busy':
      return words.busy;
    case 'clash': {
      const [first] = outcome.plan.clashes;
      return words.clashText(
        outcome.plan.clashCount,
        first ? words.clash(first.device, first.sequence) : words.none,
      );
    }
    case 'log-unreadable':
      return words.unreadable(outcome.problem);
    case 'cut-short':
      return words.cutShort(outcome.written, outcome.of, outcome.problem);
  }
}
