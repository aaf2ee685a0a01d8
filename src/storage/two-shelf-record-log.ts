import type { RecordLog, WallRange } from '../application/ports/record-log';
import type { ReserveShelf } from '../application/ports/reserve-shelf';
import type { LogRecord } from '../domain/records/log-record';
import type { Healing } from './heal-shelves';
import type { OwnEnd } from './journal/journal-line';
import type { Journal } from './journal-client';

/**
 * The log on two shelves, written side by side. A record is saved when both hold it. Everything is read from
 * the database.
 *
 * Side by side, because a kill cannot harm both: what it tears in the journal is a last line that was never
 * acknowledged, and that is cut off; nothing before it is ever written again.
 */
export class TwoShelfRecordLog implements RecordLog {
  private constructor(
    private readonly database: RecordLog,
    private readonly journal: Journal,
  ) {}

  /** Compares the two shelves and fills either from the other before anything is read. */
  static async open(
    database: RecordLog,
    journal: Journal,
    reserve: ReserveShelf | null = null,
  ): Promise<{ log: RecordLog; healing: Healing }> {
    const log = new TwoShelfRecordLog(database, journal);
    if (await isLevel(database, journal)) return { log, healing: { restored: 0, copied: 0, damaged: 0 } };
    const { healShelves } = await import('./heal-shelves');
    return { log, healing: await healShelves(database, journal, reserve) };
  }

  get device(): string {
    return this.database.device;
  }

  async append(records: readonly LogRecord[]): Promise<void> {
    // Those of another tablet are not counted by ours, so a copy that is cut short would not be noticed at the
    // next opening. The journal first: what it has and the database lacks is missed, and copied again.
    if (records.some(({ device }) => device !== this.device)) {
      await this.journal.append(records, this.device);
      return this.database.append(records);
    }
    // The database is the slower one, and is asked first.
    const answers = await Promise.allSettled([
      this.database.append(records),
      this.journal.append(this.notInJournal(records), this.device),
    ]);
    // What one shelf refused is sent again to both: the database knows what it has, and so does the journal's end.
    for (const answer of answers) if (answer.status === 'rejected') throw answer.reason;
  }

  /** While the database refuses, all that waits comes again and again: the journal has most of it by then. */
  private notInJournal(records: readonly LogRecord[]): readonly LogRecord[] {
    const { ownEnd } = this.journal;
    return records.slice(records.findIndex((record) => isAt(ownEnd, record)) + 1);
  }

  readStream(stream: string): Promise<LogRecord[]> {
    return this.database.readStream(stream);
  }
  readStarts(what: 'turn' | 'study' | 'lots', range?: WallRange): Promise<LogRecord[]> {
    return this.database.readStarts(what, range);
  }
  readLatestStarts(what: 'turn' | 'study' | 'lots', count: number): Promise<LogRecord[]> {
    return this.database.readLatestStarts(what, count);
  }
  lastRecord(): Promise<LogRecord | null> {
    return this.database.lastRecord();
  }
  readNewest(count: number): Promise<LogRecord[]> {
    return this.database.readNewest(count);
  }
  readAll(): AsyncIterable<LogRecord[]> {
    return this.database.readAll();
  }
  count(): Promise<number> {
    return this.database.count();
  }
  countByDevice(): Promise<ReadonlyMap<string, number>> {
    return this.database.countByDevice();
  }
  wake(): Promise<void> {
    return this.database.wake();
  }
  close(): void {
    this.database.close();
    this.journal.close();
  }
}

/**
 * A tablet numbers its own records without a gap, so the shelf whose last own number is higher holds what the other
 * lost. The same last record is the rule, and costs two small reads: the chain tells it from another one of its number.
 */
async function isLevel(database: RecordLog, journal: Journal): Promise<boolean> {
  const { device } = database;
  const end = journal.ownEnd ?? { device, sequence: 0, chain: 0 };
  return isAt(end, (await database.lastRecord()) ?? { device, sequence: 0, chain: 0 });
}

function isAt(
  end: OwnEnd | null,
  { device, sequence, chain }: Omit<OwnEnd, 'chain'> & { chain: number },
): boolean {
  return end?.device === device && end.sequence === sequence && (end.chain === null || end.chain === chain);
}
