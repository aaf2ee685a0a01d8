import type { BackupAbout } from '../application/ports/backup-format';
import { RECORD_VERSION } from '../domain/records/upgrade-record';
import { stampShape } from './backup-record-shape';
import { BackupRefusal } from './backup-refusal';
import { exactly, isObject, oneOf, text } from './backup-shape';

// DO NOT CHANGE. Files in drawers and on shares begin with it.
export const BACKUP_FORMAT = 'pacewright-backup';

export interface BackupHeader extends BackupAbout {
  readonly format: typeof BACKUP_FORMAT;
  /** Of the file and of the facts in it. */
  readonly version: number;
}

const headerShape = exactly<BackupHeader>({
  format: oneOf(BACKUP_FORMAT),
  version: (value) => (Number.isSafeInteger(value) && (value as number) >= 1 ? null : ''),
  release: text,
  device: text,
  madeAt: stampShape,
});

/** The first line of a backup, without its line feed. */
export function backupHeaderLine({ release, device, madeAt }: BackupAbout): string {
  const header: BackupHeader = { format: BACKUP_FORMAT, version: RECORD_VERSION, release, device, madeAt };
  return JSON.stringify(header);
}

/** @throws {BackupRefusal} for a line that is no header, or one of a version this release does not know */
export function readBackupHeader(line: string): BackupHeader {
  const value = parsed(line);
  if (!isObject(value) || value.format !== BACKUP_FORMAT) throw new BackupRefusal({ code: 'not-a-backup' });
  // A newer version may have another header: its number is all that can be relied on.
  if (typeof value.version === 'number' && value.version > RECORD_VERSION) {
    const release = typeof value.release === 'string' ? value.release : '';
    throw new BackupRefusal({ code: 'made-by-newer-version', release });
  }
  if (headerShape(value) !== null) throw new BackupRefusal({ code: 'not-a-backup' });
  return value as unknown as BackupHeader;
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}
