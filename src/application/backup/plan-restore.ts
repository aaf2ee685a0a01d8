import type { LogRecord } from '../../domain/records/log-record';
import { recordLine } from '../../domain/records/record-line';
import type { Stamp } from '../../domain/records/stamp';
import type { BackupFault } from '../ports/backup-fault';
import type { BackupSource, BackupSummary } from '../ports/backup-format';
import type { RecordLog, WallRange } from '../ports/record-log';
import type { BackupTools } from './backup-tools';

/** Records of one device that follow one another, both ends included. */
export interface RecordRange {
  readonly device: string;
  readonly from: number;
  to: number;
}

/** What a restore would do. */
export interface RestorePlan {
  readonly summary: BackupSummary;
  readonly devices: readonly DeviceMerge[];
  readonly added: number;
  readonly alreadyThere: number;
  /** Keys under which the log has another record, the first of them, and how many in all. */
  readonly clashes: readonly { readonly device: string; readonly sequence: number }[];
  readonly clashCount: number;
  /** The records that the log lacks. */
  readonly missing: readonly RecordRange[];
  /** The newest moment by the clock of another tablet that would be added; null when there is none. */
  readonly newest: Stamp | null;
  /** From the first to the last turn that would be added, by wall clock; null when there is none. */
  readonly turns: WallRange | null;
}

export interface DeviceMerge {
  readonly device: string;
  added: number;
  alreadyThere: number;
}

const MOST_CLASHES = 20;

/**
 * Reads a whole backup, checks it, and compares it with the log record by record. Both are in the order of
 * device and sequence, so they are read side by side. Nothing is written.
 */
export async function planRestore(
  log: RecordLog,
  { format }: Pick<BackupTools, 'format'>,
  source: BackupSource,
  passphrase?: string,
): Promise<{ ok: true; plan: RestorePlan } | { ok: false; fault: BackupFault }> {
  const comparing = new Comparing(log);
  try {
    const reading = await format.read(source, { passphrase, take: (records) => comparing.take(records) });
    return reading.ok ? { ok: true, plan: comparing.plan(reading.summary) } : reading;
  } finally {
    await comparing.close();
  }
}

class Comparing {
  private readonly there: AsyncIterator<LogRecord[]>;
  private batch: LogRecord[] = [];
  private place = 0;
  private readonly devices: DeviceMerge[] = [];
  private readonly clashes: { device: string; sequence: number }[] = [];
  private clashCount = 0;
  private readonly missing: RecordRange[] = [];
  private newest: Stamp | null = null;
  private turns: { fromWallMs: number; toWallMs: number } | null = null;

  constructor(private readonly log: RecordLog) {
    this.there = log.readAll()[Symbol.asyncIterator]();
  }

  async take(records: readonly LogRecord[]): Promise<void> {
    for (const record of records) {
      let own = this.devices.at(-1);
      if (own?.device !== record.device) {
        own = { device: record.device, added: 0, alreadyThere: 0 };
        this.devices.push(own);
      }
      let there = this.batch[this.place];
      while (there === undefined || isBefore(there, record)) {
        if (there === undefined && !(await this.readOn())) break;
        else if (there !== undefined) this.place += 1;
        there = this.batch[this.place];
      }
      if (there === undefined || isBefore(record, there)) {
        own.added += 1;
        this.miss(record);
      } else if (recordLine(there) === recordLine(record)) {
        own.alreadyThere += 1;
      } else {
        this.clashCount += 1;
        const { device, sequence } = record;
        if (this.clashes.length < MOST_CLASHES) this.clashes.push({ device, sequence });
      }
    }
  }

  plan(summary: BackupSummary): RestorePlan {
    const { devices, clashes, clashCount, missing, newest, turns } = this;
    const sum = (of: (device: DeviceMerge) => number) => devices.reduce((all, each) => all + of(each), 0);
    return {
      summary,
      devices,
      added: sum(({ added }) => added),
      alreadyThere: sum(({ alreadyThere }) => alreadyThere),
      clashes,
      clashCount,
      missing,
      newest,
      turns,
    };
  }

  async close(): Promise<void> {
    await this.there.return?.();
  }

  /** The log's next records; false when there are no more. */
  private async readOn(): Promise<boolean> {
    const { done, value } = await this.there.next();
    this.batch = done ? [] : value;
    this.place = 0;
    return !done;
  }

  private miss({ device, sequence, fact, stamp }: LogRecord): void {
    const { wallMs } = stamp;
    if (device !== this.log.device && wallMs > (this.newest?.wallMs ?? 0)) this.newest = stamp;
    const range = this.missing.at(-1);
    if (range?.device === device && range.to === sequence - 1) range.to = sequence;
    else this.missing.push({ device, from: sequence, to: sequence });
    if (fact.kind !== 'turn-started') return;
    this.turns = {
      fromWallMs: Math.min(this.turns?.fromWallMs ?? wallMs, wallMs),
      toWallMs: Math.max(this.turns?.toWallMs ?? wallMs, wallMs),
    };
  }
}

function isBefore(a: LogRecord, b: LogRecord): boolean {
  return a.device === b.device ? a.sequence < b.sequence : a.device < b.device;
}
