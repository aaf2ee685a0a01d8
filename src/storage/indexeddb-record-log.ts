import type { IDBPDatabase } from 'idb';
import type { RecordLog, WallRange } from '../application/ports/record-log';
import { inStreamOrder } from '../domain/records/in-stream-order';
import type { LogRecord } from '../domain/records/log-record';
import { isSameRecord } from '../domain/records/record-key';
import type { Schema } from './database-schema';
import { openDatabase } from './open-database';

/** Records a read of everything takes at a time: 20,000 made a pause of 0.4 s, 1,000 was no slower in all. */
const BATCH = 1_000;

/**
 * The log on IndexedDB.
 *
 * Every write asks for `strict` durability: the browsers' default loses up to half a minute of
 * acknowledged records when the power goes, and these records are the only copy.
 */
export class IndexedDbRecordLog implements RecordLog {
  private database: Promise<IDBPDatabase<Schema>>;
  private lost = false;

  private ownDevice = '';

  private constructor(private readonly name: string) {
    this.database = this.reopen();
  }

  /** @param newDevice names this tablet when the database does not know it yet */
  static async open(name: string, newDevice: () => string): Promise<IndexedDbRecordLog> {
    const log = new IndexedDbRecordLog(name);
    const database = await log.database;
    const known = await database.get('tablet', 'device');
    log.ownDevice = known ?? newDevice();
    if (known === undefined) {
      const transaction = database.transaction('tablet', 'readwrite', { durability: 'strict' });
      await Promise.all([transaction.store.add(log.ownDevice, 'device'), transaction.done]);
    }
    return log;
  }

  get device(): string {
    return this.ownDevice;
  }

  async append(records: readonly LogRecord[]): Promise<void> {
    try {
      await this.use(async (database) => {
        const transaction = database.transaction('records', 'readwrite', { durability: 'strict' });
        const added = records.map((record) => transaction.store.add(record));
        // Said at once, or the end would wait until the page had been told of every request.
        transaction.commit();
        await Promise.all([...added, transaction.done]);
      });
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'ConstraintError') throw error;
      const missing = await this.missing(records, error);
      if (missing.length > 0) await this.append(missing);
    }
  }

  /** Those of the records that are not there; the given error where another record has the key. */
  private async missing(records: readonly LogRecord[], taken: DOMException): Promise<LogRecord[]> {
    const there = await this.use((database) => {
      const { store } = database.transaction('records');
      return Promise.all(records.map(({ device, sequence }) => store.get([device, sequence])));
    });
    const isClash = there.some((found, place) => found && !isSameRecord(found, records[place]!));
    // A call that holds a key twice finds none of them there.
    if (isClash || there.every((found) => !found)) throw taken;
    return records.filter((_, place) => !there[place]);
  }

  async readStream(stream: string): Promise<LogRecord[]> {
    const records = await this.use((database) => database.getAllFromIndex('records', 'by-stream', stream));
    return inStreamOrder(stream, records);
  }

  async readStarts(what: 'turn' | 'study' | 'lots', range?: WallRange): Promise<LogRecord[]> {
    const from = [what, range?.fromWallMs ?? Number.NEGATIVE_INFINITY] as [string, number];
    const to = [what, range?.toWallMs ?? Number.POSITIVE_INFINITY] as [string, number];
    const span = IDBKeyRange.bound(from, to);
    return this.use((database) => database.getAllFromIndex('records', 'by-start', span));
  }

  async readLatestStarts(what: 'turn' | 'study' | 'lots', count: number): Promise<LogRecord[]> {
    const all = IDBKeyRange.bound([what, Number.NEGATIVE_INFINITY], [what, Number.POSITIVE_INFINITY]);
    return this.use(async (database) => {
      const latest: LogRecord[] = [];
      const index = database.transaction('records').store.index('by-start');
      let cursor = await index.openCursor(all, 'prev');
      while (cursor && latest.length < count) {
        latest.push(cursor.value);
        cursor = await cursor.continue();
      }
      return latest;
    });
  }

  async lastRecord(): Promise<LogRecord | null> {
    const own = IDBKeyRange.bound([this.device, 0], [this.device, Number.POSITIVE_INFINITY]);
    const cursor = await this.use((database) =>
      database.transaction('records').store.openCursor(own, 'prev'),
    );
    return cursor?.value ?? null;
  }

  async readNewest(count: number): Promise<LogRecord[]> {
    const last = (await this.lastRecord())?.sequence ?? 0;
    const newest = IDBKeyRange.bound([this.device, last - count + 1], [this.device, last]);
    return this.use((database) => database.getAll('records', newest));
  }

  async *readAll(): AsyncIterable<LogRecord[]> {
    let after: IDBKeyRange | undefined;
    for (;;) {
      const batch = await this.use((database) => database.getAll('records', after, BATCH));
      if (batch.length > 0) yield batch;
      const last = batch.at(-1);
      if (!last || batch.length < BATCH) return;
      after = IDBKeyRange.lowerBound([last.device, last.sequence], true);
    }
  }

  async count(): Promise<number> {
    return this.use((database) => database.count('records'));
  }

  close(): void {
    this.database.then(
      (database) => database.close(),
      () => {},
    );
  }

  /** A handle that the browser took away is never used again: it is dropped, and the database reopened. */
  private async use<Result>(work: (database: IDBPDatabase<Schema>) => Promise<Result>): Promise<Result> {
    try {
      return await work(await this.database);
    } catch (error) {
      const handleIsDead = error instanceof DOMException && error.name === 'InvalidStateError';
      if (!handleIsDead && !this.lost) throw error;
      return work(await this.reopen());
    }
  }

  private reopen(): Promise<IDBPDatabase<Schema>> {
    this.database = openDatabase(this.name, {
      lost: () => {
        this.lost = true;
      },
    });
    this.lost = false;
    // Whoever uses the database is told; the promise itself must not be an unhandled rejection meanwhile.
    this.database.catch(() => {
      this.lost = true;
    });
    return this.database;
  }
}
