import type { CopyRefusal } from '../../application/backup/copy-made';
import { backupFaultSentence } from '../../exchange/backup-fault-sentence';
import { copiesWords } from '../../i18n/en/copies';

/** Why no copy was made, in one sentence. */
export function refusalInWords(refusal: CopyRefusal): string {
  return refusal.reason === 'not-verified'
    ? copiesWords.keep.notVerified(backupFaultSentence(refusal.fault))
    : copiesWords.keep.notWritten(refusal.problem);
}
