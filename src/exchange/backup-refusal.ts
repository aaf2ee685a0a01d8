import type { BackupFault } from '../application/ports/backup-fault';

/** Unwinds the reading of a backup to where its answer is given; never seen outside. */
export class BackupRefusal extends Error {
  constructor(readonly fault: BackupFault) {
    super(fault.code);
  }
}
