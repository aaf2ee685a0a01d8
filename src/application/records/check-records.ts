import { type ChainBreak, ChainCheck } from '../../domain/records/chain-check';
import type { LogRecord } from '../../domain/records/log-record';
import type { BackupFormat } from '../ports/backup-format';
import type { RecordLog } from '../ports/record-log';

/** A break of the chain, or a record that no copy can hold. */
export type RecordFault = Omit<ChainBreak, 'why'> & { readonly why: ChainBreak['why'] | 'unreadable' };
type Takes = BackupFormat['takes'];

/** What following the chain of checksums through the log came to. */
export interface RecordsCheck {
  readonly records: number;
  readonly devices: number;
  readonly breakCount: number;
  /** The first of them. */
  readonly breaks: readonly RecordFault[];
}

const MOST_BREAKS = 20;
/** At every opening: a tap on each of some hundred parts, and read in an instant. */
export const NEWEST = 1_000;

/**
 * Follows every record of the log. It reads and changes nothing; what is sound on both sides of a break stays
 * readable and goes into every copy.
 *
 * @param told called after each batch with how many records were looked at
 * @param takes whether a copy can hold a record; left out where none is made
 */
export async function checkRecords(
  log: RecordLog,
  told: (records: number) => void,
  takes?: Takes,
): Promise<RecordsCheck> {
  const following = new Following(takes);
  for await (const batch of log.readAll()) {
    for (const record of batch) following.take(record);
    told(following.records);
  }
  return following.found();
}

/** Follows the newest records of this tablet alone; the first of them is taken on trust. */
export async function checkNewestRecords(log: RecordLog, takes: Takes): Promise<readonly RecordFault[]> {
  const check = new ChainCheck();
  const newest = await log.readNewest(NEWEST);
  for (const record of newest) check.take(record);
  return [...check.breaks, ...newest.filter((record) => !takes(record)).map(unreadable)];
}

class Following {
  records = 0;
  private devices = 0;
  private device = '';
  private breakCount = 0;
  private readonly breaks: RecordFault[] = [];
  private readonly check = new ChainCheck();

  constructor(private readonly takes: Takes = () => true) {}

  take(record: LogRecord): void {
    this.records += 1;
    if (record.device !== this.device) {
      this.device = record.device;
      this.devices += 1;
      // The check takes the first record it sees of a device on trust; this is the whole log.
      if (record.sequence > 1) this.note({ device: record.device, sequence: 1, why: 'missing' });
    }
    this.check.take(record);
    for (const found of this.check.breaks.splice(0)) this.note(found);
    if (!this.takes(record)) this.note(unreadable(record));
  }

  found(): RecordsCheck {
    const { records, devices, breakCount, breaks } = this;
    return { records, devices, breakCount, breaks };
  }

  private note(found: RecordFault): void {
    this.breakCount += 1;
    if (this.breaks.length < MOST_BREAKS) this.breaks.push(found);
  }
}

function unreadable({ device, sequence }: LogRecord): RecordFault {
  return { device, sequence, why: 'unreadable' };
}
