import type { IDBPDatabase } from 'idb';
import type { RecordLog, WallRange } from '../application/ports/record-log';
import { inStreamOrder } from '../domain/records/in-stream-order';
import type { LogRecord } from '../domain/records/log-record';
import type { Schema } from './database-schema';
import { openDatabase } from './open-database';
import { within } from './within';

/** Records a read of everything takes at a time: 20,000 made a pause of 0.4 s, 1,000 was no slower in all. */
const BATCH = 1_000;
/** A handle that has not answered by then is taken for dead. A strict write takes 25 ms where it is slow. */
const PATIENCE_MS = 2_000;
const PATIENCE_MS_A_RECORD = 2;
const ATTEMPTS = 3;
/** What a dead handle says, at whichever moment it is found out. Full, refused, and taken are other matters. */
const deadHandle = ['InvalidStateError', 'AbortError', 'UnknownError', 'TimeoutError'];

export interface LogHolder {
  /** A tab of an older release holds the database open: opening waits for it. */
  readonly heldUp?: () => void;
  /** Whether a newer release that wants the database may have it now: not while something is being timed. */
  readonly mayLetGo?: () => boolean;
}

/**
 * The log on IndexedDB.
 *
 * Every write asks for `strict` durability: the browsers' default loses up to half a minute of
 * acknowledged records when the power goes, and these records are the only copy.
 *
 * Must never use a handle again that has failed: browsers take them away in the background, and every further
 * attempt on the same one fails alike. It is dropped, the database is opened anew, and the work done again.
 */
export class IndexedDbRecordLog implements RecordLog {
  /** The handle in use, or on its way; null when the next use has to open one. */
  private database: Promise<IDBPDatabase<Schema>> | null = null;
  /** The same once it is there: a record goes to it in the tap's own turn, before anything is drawn. */
  private atHand: IDBPDatabase<Schema> | null = null;
  private awake: Promise<unknown> | null = null;
  private isWanted = false;
  private ownDevice = '';

  private constructor(
    private readonly name: string,
    private readonly holder: LogHolder,
  ) {}

  /** @param newDevice names this tablet when the database does not know it yet */
  static async open(
    name: string,
    newDevice: () => string | Promise<string>,
    holder: LogHolder = {},
  ): Promise<IndexedDbRecordLog> {
    const log = new IndexedDbRecordLog(name, holder);
    const known = await log.use((database) => database.get('tablet', 'device'));
    log.ownDevice = known ?? (await log.nameTablet(await newDevice()));
    return log;
  }

  /** The name that is kept: another tab may have given one in the meantime. */
  private nameTablet(device: string): Promise<string> {
    return this.use(async (database) => {
      const transaction = database.transaction('tablet', 'readwrite', { durability: 'strict' });
      const known = await transaction.store.get('device');
      if (known === undefined) transaction.store.put(device, 'device');
      await transaction.done;
      return known ?? device;
    });
  }

  get device(): string {
    return this.ownDevice;
  }

  async append(records: readonly LogRecord[]): Promise<void> {
    if (this.awake) await this.awake;
    try {
      await this.use(
        async (database) => {
          const transaction = database.transaction('records', 'readwrite', { durability: 'strict' });
          const added = records.map((record) => transaction.store.add(record));
          // Said at once, or the end would wait until the page had been told of every request.
          transaction.commit();
          await Promise.all([...added, transaction.done]);
        },
        PATIENCE_MS + PATIENCE_MS_A_RECORD * records.length,
      );
      if (this.isWanted) this.letGo();
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'ConstraintError') throw error;
      const { missingRecords } = await import('./missing-records');
      const missing = await missingRecords(records, error, (work) => this.use(work));
      if (missing.length > 0) await this.append(missing);
    }
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
    // A range without anything in it is refused.
    if (count < 1) return [];
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
    return [...(await this.countByDevice()).values()].reduce((all, each) => all + each, 0);
  }

  async countByDevice(): Promise<ReadonlyMap<string, number>> {
    const { countRecords } = await import('./count-records');
    return countRecords((work) => this.use(work));
  }

  /** Writes wait for it: one small read shows whether the handle outlived the time the page was away. */
  async wake(): Promise<void> {
    const awake = this.use((database) => database.get('tablet', 'device'), PATIENCE_MS).catch(() => {});
    this.awake = awake;
    await awake;
    if (this.awake === awake) this.awake = null;
  }

  close(): void {
    this.drop();
  }

  /** Does the work on the handle in use; where that is dead, on a new one. */
  private async use<Result>(
    work: (database: IDBPDatabase<Schema>) => Promise<Result>,
    patienceMs?: number,
  ): Promise<Result> {
    for (let attempt = 1; ; attempt += 1) {
      this.database ??= this.reopen();
      const used = this.database;
      let isOpen = false;
      const begin = (database: IDBPDatabase<Schema>) => {
        isOpen = true;
        return work(database);
      };
      try {
        const worked = this.atHand ? begin(this.atHand) : used.then(begin);
        return await (patienceMs ? within(patienceMs, worked) : worked);
      } catch (error) {
        const isDead = error instanceof DOMException && deadHandle.includes(error.name);
        // One that is still being opened is only slow: dropped, it would never be there.
        if (isDead && isOpen) this.drop(used);
        if (!isDead || attempt === ATTEMPTS) throw error;
      }
    }
  }

  private reopen(): Promise<IDBPDatabase<Schema>> {
    const opened = openDatabase(this.name, {
      blocked: () => this.holder.heldUp?.(),
      wanted: () => this.letGo(),
      lost: () => this.drop(opened),
    });
    // Whoever uses the database is told; the next one tries anew.
    opened.then(
      (database) => {
        if (this.database === opened) this.atHand = database;
      },
      () => this.drop(opened),
    );
    return opened;
  }

  /** What is timed here is finished first; until then the newer release waits, and says so. */
  private letGo(): void {
    this.isWanted = !(this.holder.mayLetGo?.() ?? true);
    if (!this.isWanted) this.drop();
  }

  /** Closes a handle; one that has been replaced meanwhile takes nothing with it. */
  private drop(handle = this.database): void {
    if (handle === this.database) {
      this.database = null;
      this.atHand = null;
    }
    handle?.then(
      (database) => database.close(),
      () => {},
    );
  }
}
