import type { BackupFormat } from '../ports/backup-format';
import type { HandOver } from '../ports/hand-over';
import type { LastSeen } from '../ports/last-seen';
import type { OutsideFolder } from '../ports/outside-folder';
import type { SnapshotStore } from '../ports/snapshot-store';

/** What copying and restoring needs beside the bench. */
export interface BackupTools {
  readonly format: BackupFormat;
  readonly handOver: HandOver;
  /** Null where the browser cannot write to a folder. */
  readonly folder: OutsideFolder | null;
  /** Null where the browser cannot keep snapshots. */
  readonly snapshots: SnapshotStore | null;
  /** What the log held when it was last looked at. */
  readonly lastSeen: LastSeen;
  /** Release of the app, written into every backup. */
  readonly release: string;
}
