import type { LogRecord } from '../../domain/records/log-record';
import type { Stamp } from '../../domain/records/stamp';
import type { OutsideFolder } from '../ports/outside-folder';
import type { RecordLog } from '../ports/record-log';
import { backupName } from './backup-name';
import type { BackupTools } from './backup-tools';
import { hasCollapsed } from './has-collapsed';

/** A name in the folder, and how many records the copy holds that would be replaced; 0 where none would. */
export interface CopyName {
  readonly name: string;
  readonly before: number;
}

/**
 * Where a day's copy may be written: over the day's earlier one, or beside it under the next number where that one holds
 * what the log lacks. After a loss it may be all that is left.
 */
export async function freeCopyName(
  log: RecordLog,
  format: BackupTools['format'],
  folder: OutsideFolder,
  { madeAt, records }: { madeAt: Stamp; records: number },
): Promise<CopyName> {
  for (let place = 1; ; place += 1) {
    const ending = `${place > 1 ? `-${place}` : ''}${format.ending(false)}`;
    const name = backupName(log.device, madeAt, ending);
    const earlier = await folder.read(name);
    let own: LogRecord | undefined;
    const take = (some: readonly LogRecord[]) => {
      for (const record of some) if (record.device === log.device) own = record;
    };
    const reading = earlier && (await format.read(earlier, { take }));
    // One that does not read back is no loss.
    if (!reading?.ok) return { name, before: 0 };
    const before = reading.summary.records;
    const isReplaced = before <= records && (!own || (await isInLog(log, own)));
    if (isReplaced || hasCollapsed(records, before)) return { name, before };
  }
}

/** Whether the log has this record of its own: by its checksum, which goes on from all own records before it. */
async function isInLog(log: RecordLog, { sequence, chain }: LogRecord): Promise<boolean> {
  const last = (await log.lastRecord())?.sequence ?? 0;
  if (last < sequence) return false;
  const [there] = await log.readNewest(last - sequence + 1);
  return there?.sequence === sequence && there.chain === chain;
}
