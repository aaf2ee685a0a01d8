import type { BackupTools } from './application/backup/backup-tools';
import { handOverFile } from './device/hand-over-file';
import { localLastSeen } from './device/local-last-seen';
import { webFolder } from './device/web-folder';
import { webSecrets } from './device/web-secrets';
import { backupFormat } from './exchange/backup-format';
import { opfsSnapshots } from './storage/opfs-snapshots';

export { tendRecords } from './application/backup/tend-records';
export { UpkeepMark } from './screens/shell/upkeep-mark';
export { webSecrets };

let tools: BackupTools | null = null;

/** The parts of main.tsx that copy and restore: a file of their own, so that the first screen never waits for them. */
export function copyingTools(): BackupTools {
  tools ??= {
    format: backupFormat(webSecrets()),
    handOver: handOverFile,
    folder: webFolder(),
    snapshots: opfsSnapshots(),
    lastSeen: localLastSeen,
    release: __RELEASE__,
  };
  return tools;
}
