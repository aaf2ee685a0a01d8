import type { RecordLog, WallRange } from '../application/ports/record-log';
import { groupBy } from '../domain/group-by';
import type { LogRecord } from '../domain/records/log-record';
import { recordKey } from '../domain/records/record-key';
import type { Journal } from './journal-client';

/** What opening found and mended. */
export interface Healing {
  /** Records the database had lost and the journal gave back. */
  readonly restored: number;
  /** Records the journal lacked and the database gave. */
  readonly copied: number;
  /** Lines of the journal that could not be read, where it had to be read whole. */
  readonly damaged: number;
}

/** A transaction of this many records keeps the page answering. */
const BATCH = 500;

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
  static async open(database: RecordLog, journal: Journal): Promise<{ log: RecordLog; healing: Healing }> {
    const healing = await heal(database, journal);
    return { log: new TwoShelfRecordLog(database, journal), healing };
  }

  get device(): string {
    return this.database.device;
  }

  async append(records: readonly LogRecord[]): Promise<void> {
    const answers = await Promise.allSettled([
      this.database.append(records),
      this.journal.append(records, this.device),
    ]);
    // What one shelf refused is sent again to both: the database knows it, the journal may hold it twice.
    for (const answer of answers) if (answer.status === 'rejected') throw answer.reason;
  }

  readStream(stream: string): Promise<LogRecord[]> {
    return this.database.readStream(stream);
  }
  readStarts(what: 'turn' | 'study', range?: WallRange): Promise<LogRecord[]> {
    return this.database.readStarts(what, range);
  }
  readLatestStarts(what: 'turn' | 'study', count: number): Promise<LogRecord[]> {
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
  close(): void {
    this.database.close();
    this.journal.close();
  }
}

/**
 * A tablet numbers its own records without a gap, so the shelf whose last own number is higher holds what
 * the other lost. Equal numbers are the rule, and cost two small reads.
 */
async function heal(database: RecordLog, journal: Journal): Promise<Healing> {
  const sequence = (await database.lastRecord())?.sequence ?? 0;
  const end = journal.ownEnd ?? { device: database.device, sequence: 0 };
  if (end.device === database.device && end.sequence === sequence)
    return { restored: 0, copied: 0, damaged: 0 };

  const { records, damaged } = await journal.readAll();
  const known = new Set<string>();
  const missingInJournal: LogRecord[] = [];
  const inTheJournal = new Set(records.map(recordKey));
  for await (const batch of database.readAll()) {
    for (const record of batch) {
      known.add(recordKey(record));
      if (!inTheJournal.has(recordKey(record))) missingInJournal.push(record);
    }
  }
  // A line may stand twice where a copy was cut short and made again.
  const missingInDatabase = [...groupBy(records, recordKey).values()]
    .map(([first]) => first!)
    .filter((record) => !known.has(recordKey(record)));
  for (const batch of inBatches(missingInDatabase)) await database.append(batch);
  for (const batch of inBatches(missingInJournal)) await journal.append(batch, database.device);
  return { restored: missingInDatabase.length, copied: missingInJournal.length, damaged };
}

function* inBatches<Item>(items: readonly Item[]): Generator<Item[]> {
  for (let from = 0; from < items.length; from += BATCH) yield items.slice(from, from + BATCH);
}
