import type { RecordLog } from '../application/ports/record-log';
import type { ReserveShelf } from '../application/ports/reserve-shelf';
import { isChainedOn } from '../domain/records/is-chained-on';
import type { LogRecord } from '../domain/records/log-record';
import { renumberRecords } from '../domain/records/renumber-records';
import { appendOrHold } from './append-or-hold';
import { healEnd } from './heal-end';
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

/** Gives each shelf what it lacks and the other has: from their ends where that is enough, else record by record. */
export async function healShelves(
  database: RecordLog,
  journal: Journal,
  reserve: ReserveShelf | null,
): Promise<Healing> {
  return (await healEnd(database, journal, reserve)) ?? (await healWhole(database, journal, reserve));
}

/**
 * Keeps the checksums of both shelves in memory, and their records a batch at a time.
 *
 * Where another tab wrote to the database alone, the journal has other records under the same numbers. The database's
 * stay where they are, and those of the journal go to its end: what either shelf has alone may have been acknowledged.
 */
async function healWhole(
  database: RecordLog,
  journal: Journal,
  reserve: ReserveShelf | null,
): Promise<Healing> {
  const inDatabase = new Chains();
  for await (const batch of database.readAll()) for (const record of batch) inDatabase.set(record);
  const inJournal = new Chains();
  let damaged = 0;
  for await (const batch of journal.readAll()) {
    damaged += batch.damaged;
    // Of two lines of one number the last holds.
    for (const record of batch.records) inJournal.set(record);
  }
  const displaced = new Displaced(database.device, inDatabase);
  let restored = 0;
  for await (const { records } of journal.readAll()) {
    const missing: LogRecord[] = [];
    for (const record of records) {
      const isOverwritten = inJournal.of(record) !== record.chain;
      const there = inDatabase.of(record);
      if (there === record.chain || displaced.take(record, isOverwritten) || isOverwritten) continue;
      // Of another tablet the database's holds: it was checked when it came in.
      if (there !== undefined) continue;
      inDatabase.set(record);
      missing.push(record);
    }
    restored += missing.length;
    for (const part of inBatches(missing)) await database.append(part);
  }
  restored += await displaced.moveTo(database, reserve);
  return { restored, copied: await copy(database, journal, inJournal), damaged };
}

/** Gives the journal what it lacks, and the last record as its end. */
async function copy(database: RecordLog, journal: Journal, inJournal: Chains): Promise<number> {
  const { device } = database;
  let copied = 0;
  for await (const batch of database.readAll()) {
    const missing = batch.filter((record) => inJournal.of(record) !== record.chain);
    copied += missing.length;
    for (const part of inBatches(missing)) await journal.append(part, device);
  }
  const last = await database.lastRecord();
  if (last && journal.ownEnd?.chain !== last.chain) await journal.append([last], device);
  return copied;
}

/** The tablet's own records that the journal alone has, because others have their numbers in the database. */
class Displaced {
  /** In the order of the journal, each once. */
  private readonly records = new Map<string, LogRecord>();
  private readonly numbers = new Set<number>();

  constructor(
    private readonly device: string,
    private readonly inDatabase: Chains,
  ) {}

  /**
   * Whether it is one of them: another has its number, or it goes on from one of them, or from another one.
   *
   * @param isOverwritten a later line has its number: the one that was acknowledged may be either
   */
  take(record: LogRecord, isOverwritten: boolean): boolean {
    const { device, sequence, chain } = record;
    if (device !== this.device) return false;
    const before = this.inDatabase.of({ device, sequence: sequence - 1 });
    const isOne =
      isOverwritten ||
      this.inDatabase.of(record) !== undefined ||
      this.numbers.has(sequence - 1) ||
      (before !== undefined && !isChainedOn([record], before));
    if (isOne) this.records.set(`${sequence} ${chain}`, record);
    if (isOne && !isOverwritten) this.numbers.add(sequence);
    return isOne;
  }

  /** Puts those that are not there yet at the end of the log; how many they were. */
  async moveTo(database: RecordLog, reserve: ReserveShelf | null): Promise<number> {
    const records = [...this.records.values()];
    const last = await database.lastRecord();
    if (records.length === 0 || !last) return 0;
    const lowest = records.reduce((low, { sequence }) => Math.min(low, sequence), last.sequence + 1);
    const there = await database.readNewest(last.sequence - lowest + 1);
    return appendOrHold(renumberRecords(records, last, there), database, reserve);
  }
}

/** The checksum of each record, by device and number: 8 bytes a record. */
class Chains {
  private readonly byDevice = new Map<string, number[]>();

  set({ device, sequence, chain }: LogRecord): void {
    const chains = this.byDevice.get(device) ?? [];
    chains[sequence] = chain;
    this.byDevice.set(device, chains);
  }

  of({ device, sequence }: Pick<LogRecord, 'device' | 'sequence'>): number | undefined {
    return this.byDevice.get(device)?.[sequence];
  }
}

function* inBatches<Item>(items: readonly Item[]): Generator<Item[]> {
  for (let from = 0; from < items.length; from += BATCH) yield items.slice(from, from + BATCH);
}
