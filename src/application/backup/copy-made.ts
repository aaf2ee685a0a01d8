import type { BackupFault } from '../ports/backup-fault';
import type { BackupSummary } from '../ports/backup-format';

/** What a copy that was written and read back holds. */
export interface CopyMade {
  readonly summary: BackupSummary;
  /** This tablet's last number in the log when the copy was begun: it may lack what was recorded after that. */
  readonly upTo: number;
  /** Records on the screen that the log did not have yet, so neither has the copy. */
  readonly unsaved: number;
  /** Records that no copy can hold. */
  readonly leftOut: number;
}

export type CopyRefusal =
  /** Written, read back, and not sound: no copy to rely on. */
  | { readonly ok: false; readonly reason: 'not-verified'; readonly fault: BackupFault }
  /** The log could not be read or the file not written; what was said. */
  | { readonly ok: false; readonly reason: 'not-written'; readonly problem: string };
