import type { CopyRefusal } from '../../application/backup/copy-made';
import { copiesWords } from '../../i18n/en/copies';
import { backupFaultInWords } from './fault-in-words';

/** Why no copy was made, in one sentence. */
export function refusalInWords(refusal: CopyRefusal): string {
  return refusal.reason === 'not-verified'
    ? copiesWords.keep.notVerified(backupFaultInWords(refusal.fault))
    : copiesWords.keep.notWritten(refusal.problem);
}
