import type { LogRecord } from '../../domain/records/log-record';
import type { TurnOverlap } from '../../domain/turn/overlapping-turns';
import type { Bench } from '../bench';
import type { BackupFault } from '../ports/backup-fault';
import type { BackupSource } from '../ports/backup-format';
import type { RecordLog } from '../ports/record-log';
import type { BackupTools } from './backup-tools';
import { planRestore, type RecordRange, type RestorePlan } from './plan-restore';
import { problemOf } from './problem-of';
import { readTurnOverlaps } from './read-turn-overlaps';

/**
 * So many records are written in one transaction, all or none: a year of a busy tablet is about 100,000, a
 * month 10,000. Browsers hold a transaction in memory, so larger ones go in parts.
 */
export const ALL_AT_ONCE = 10_000;
const PART = 1_000;

export type RestoreOutcome =
  | {
      readonly ok: true;
      readonly plan: RestorePlan;
      /** How many records were written, by tablet. */
      readonly cameIn: ReadonlyMap<string, number>;
      /** One person in two turns at once, for a person to resolve; null when that could not be read. */
      readonly overlaps: readonly TurnOverlap[] | null;
    }
  /** The file is not sound. Nothing was written. */
  | { readonly ok: false; readonly reason: 'refused'; readonly fault: BackupFault }
  /** Something is being timed: a restore waits until nothing is. */
  | { readonly ok: false; readonly reason: 'busy' }
  /** The log holds other records under the same keys. Nothing was written. */
  | { readonly ok: false; readonly reason: 'clash'; readonly plan: RestorePlan }
  /** The log could not be read to compare. Nothing was written. */
  | { readonly ok: false; readonly reason: 'log-unreadable'; readonly problem: string }
  /** The log refused after so many records; restoring again writes the rest. */
  | {
      readonly ok: false;
      readonly reason: 'cut-short';
      readonly written: number;
      readonly of: number;
      readonly problem: string;
      readonly cameIn: ReadonlyMap<string, number>;
    };

/**
 * Merges a backup into the log.
 *
 * Must write nothing before the whole file was read, checked and compared with the log.
 * Must skip what is there word for word, so that restoring twice is restoring once.
 * Must change nothing that is there: a key that another record has refuses the whole file.
 * Must leave the log as it was when it fails, up to ALL_AT_ONCE new records: they are one transaction. A larger
 * restore that is cut short has added sound records and changed none; restoring again adds the rest.
 *
 * The bench must be opened anew afterwards: what it has in hand was read before.
 */
export async function restoreBackup(
  bench: Pick<Bench, 'log' | 'busy'>,
  tools: Pick<BackupTools, 'format'>,
  source: BackupSource,
  passphrase?: string,
): Promise<RestoreOutcome> {
  if (bench.busy) return { ok: false, reason: 'busy' };
  const { log } = bench;
  let written = 0;
  let of = 0;
  const cameIn = new Map<string, number>();
  try {
    const planned = await planRestore(log, tools, source, passphrase);
    if (!planned.ok) return { ok: false, reason: 'refused', fault: planned.fault };
    const { plan } = planned;
    if (plan.clashCount > 0) return { ok: false, reason: 'clash', plan };
    of = plan.added;
    const writing = new Writing(log, plan, (records) => {
      written += records.length;
      for (const { device } of records) cameIn.set(device, (cameIn.get(device) ?? 0) + 1);
    });
    if (of > 0) {
      const again = await tools.format.read(source, {
        passphrase,
        take: (records) => writing.take(records),
      });
      if (!again.ok)
        return { ok: false, reason: 'cut-short', written, of, problem: again.fault.code, cameIn };
      await writing.finish();
    }
    const overlaps = plan.turns ? await readTurnOverlaps(log, plan.turns).catch(() => null) : [];
    return { ok: true, plan, cameIn, overlaps };
  } catch (error) {
    const problem = problemOf(error);
    return of === 0
      ? { ok: false, reason: 'log-unreadable', problem }
      : { ok: false, reason: 'cut-short', written, of, problem, cameIn };
  }
}

/** Writes the records the log lacks, as they are read the second time. */
class Writing {
  private waiting: LogRecord[] = [];
  private place = 0;

  constructor(
    private readonly log: RecordLog,
    private readonly plan: RestorePlan,
    private readonly wrote: (records: readonly LogRecord[]) => void,
  ) {}

  async take(records: readonly LogRecord[]): Promise<void> {
    const isInParts = this.plan.added > ALL_AT_ONCE;
    for (const record of records) {
      if (!this.isMissing(record)) continue;
      this.waiting.push(record);
      if (isInParts && this.waiting.length === PART) await this.write();
    }
  }

  async finish(): Promise<void> {
    if (this.waiting.length > 0) await this.write();
  }

  private async write(): Promise<void> {
    const records = this.waiting;
    this.waiting = [];
    // A log on two shelves may have one of them written when it refuses; the second time it fills the other.
    await this.log.append(records).catch(() => this.log.append(records));
    this.wrote(records);
  }

  private isMissing({ device, sequence }: LogRecord): boolean {
    const ranges = this.plan.missing;
    while (isOver(ranges[this.place], device, sequence)) this.place += 1;
    const range = ranges[this.place];
    return range !== undefined && range.device === device && sequence >= range.from;
  }
}

function isOver(range: RecordRange | undefined, device: string, sequence: number): boolean {
  if (!range) return false;
  return range.device === device ? range.to < sequence : range.device < device;
}
