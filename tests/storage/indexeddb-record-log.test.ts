import 'fake-indexeddb/auto';
import { forceCloseDatabase, IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { migrations } from '../../src/storage/migrations';
import { openDatabase } from '../../src/storage/open-database';
import { recordAt } from '../support/records';
import { recordLogContract } from './record-log-contract';

const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;

type Begin = IDBDatabase['transaction'];

/** Every handle that was opened, bare, in order. */
let handles: IDBDatabase[] = [];
const { transaction } = IDBDatabase.prototype;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  handles = [];
  const { open } = indexedDB;
  indexedDB.open = (...what) => {
    const request = open.apply(indexedDB, what);
    request.addEventListener('success', () => handles.push(request.result));
    return request;
  };
});
afterEach(() => {
  IDBDatabase.prototype.transaction = transaction;
});

/** This one handle answers so from here on. */
function refuse(handle: IDBDatabase, answer: (...asked: Parameters<Begin>) => unknown): void {
  handle.transaction = answer as Begin;
}

/** Every write fails, whatever the handle; until the returned function is called. */
function refuseAll(name: string): () => void {
  IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...asked: Parameters<Begin>) {
    if (asked[1] === 'readwrite') throw new DOMException('planted', name);
    return transaction.apply(this, asked);
  };
  return () => {
    IDBDatabase.prototype.transaction = transaction;
  };
}

function watchTransactions(tell: (change: 1 | -1) => void): void {
  IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...asked: Parameters<Begin>) {
    const begun = transaction.apply(this, asked);
    tell(1);
    const isOver = () => tell(-1);
    begun.addEventListener('complete', isOver);
    begun.addEventListener('abort', isOver);
    return begun;
  };
}

function asked<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function openNewer(blocked: () => void): Promise<IDBDatabase> {
  const request = indexedDB.open('shop', 99);
  request.onblocked = blocked;
  return asked(request);
}

async function sequences(log: IndexedDbRecordLog): Promise<number[]> {
  return (await log.readStream('s')).map(({ sequence }) => sequence);
}

recordLogContract('the log on a simulated IndexedDB', () => IndexedDbRecordLog.open('contract', () => 't'));

describe('the log on IndexedDB', () => {
  it('keeps its name and its records when it is opened again', async () => {
    const first = await IndexedDbRecordLog.open('shop', () => 'tablet-a');
    await first.append([recordAt(1, 0, 's', done, { device: 'tablet-a' })]);
    first.close();
    const again = await IndexedDbRecordLog.open('shop', () => 'tablet-b');
    expect(again.device).toBe('tablet-a');
    expect((await again.lastRecord())?.sequence).toBe(1);
  });

  it('drops a handle that the browser took away and goes on with a new one', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    await log.append([recordAt(1, 0, 's', done)]);
    forceCloseDatabase(handles.at(-1) as never);
    await log.append([recordAt(2, 1, 's', done)]);
    expect(await sequences(log)).toEqual([1, 2]);
    expect(handles).toHaveLength(2);
  });

  for (const name of ['InvalidStateError', 'AbortError', 'UnknownError']) {
    it(`uses no handle again that has said ${name}, and has the record written all the same`, async () => {
      const log = await IndexedDbRecordLog.open('shop', () => 't');
      const [dead] = handles;
      refuse(dead!, () => {
        throw new DOMException('Connection to Indexed Database server lost', name);
      });
      await log.append([recordAt(1, 0, 's', done)]);
      await log.append([recordAt(2, 1, 's', done)]);
      expect(await sequences(log)).toEqual([1, 2]);
      expect(handles).toHaveLength(2);
    });
  }

  it('gives up after three handles, and begins anew with the next record', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    const stop = refuseAll('UnknownError');
    await expect(log.append([recordAt(1, 0, 's', done)])).rejects.toThrow('planted');
    expect(handles).toHaveLength(3);
    stop();
    await log.append([recordAt(1, 0, 's', done)]);
    expect(await sequences(log)).toEqual([1]);
  });

  it('keeps the handle where it is not at fault: a full storage', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    const stop = refuseAll('QuotaExceededError');
    await expect(log.append([recordAt(1, 0, 's', done)])).rejects.toThrow('planted');
    stop();
    await log.append([recordAt(1, 0, 's', done)]);
    expect(handles).toHaveLength(1);
  });

  it('takes a handle that does not answer for dead, and writes once on another', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    // A transaction of which nothing is ever heard.
    const never = new Promise(() => {});
    refuse(handles[0]!, () => ({ store: { add: () => never }, commit() {}, done: never }));
    await log.append([recordAt(1, 0, 's', done)]);
    expect(await sequences(log)).toEqual([1]);
    expect(handles).toHaveLength(2);
  });

  it('looks after a pause whether the handle lives, and writes nothing before it knows', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    const said: string[] = [];
    refuse(handles[0]!, (_stores, mode) => {
      said.push(mode ?? 'readonly');
      throw new DOMException('Connection to Indexed Database server lost', 'UnknownError');
    });
    const awake = log.wake();
    await Promise.all([awake, log.append([recordAt(1, 0, 's', done)])]);
    expect(said).toEqual(['readonly']);
    expect(await sequences(log)).toEqual([1]);
  });

  it('leaves no transaction open behind an answer: a page that is put to sleep would hold it', async () => {
    let open = 0;
    watchTransactions((change) => {
      open += change;
    });
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    const start = { ...done, kind: 'turn-started', starts: 'turn', person: 'K7' } as const;
    const uses: (() => Promise<unknown>)[] = [
      () => log.append([recordAt(1, 0, 't:1', start), recordAt(2, 1, 't:1', done)]),
      () => log.append([recordAt(2, 1, 't:1', done), recordAt(3, 2, 't:1', done)]),
      () => log.readStream('t:1'),
      () => log.readStarts('turn'),
      () => log.readLatestStarts('turn', 1),
      () => log.lastRecord(),
      () => log.readNewest(2),
      () => log.count(),
      () => log.wake(),
      async () => {
        for await (const batch of log.readAll()) expect(batch).toHaveLength(3);
      },
    ];
    for (const use of uses) {
      await use();
      // It ends in a task of its own after the answer, beside which the timer's may come first.
      for (let tasks = 0; tasks < 5 && open > 0; tasks += 1) {
        await new Promise((resolve) => setTimeout(resolve, 0));
      }
      expect(open, String(use)).toBe(0);
    }
  });
});

describe('the log of an older release, when a newer one wants the database', () => {
  it('lets go of it at once while nothing is timed, and then says that the version is newer', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    await log.append([recordAt(1, 0, 's', done)]);
    const newer = await openNewer(() => expect.unreachable('blocked'));
    expect(newer.version).toBe(99);
    await expect(log.append([recordAt(2, 1, 's', done)])).rejects.toMatchObject({ name: 'VersionError' });
    newer.close();
  });

  it('finishes what is being timed first: the newer one waits, and has every record', async () => {
    let isTiming = true;
    const log = await IndexedDbRecordLog.open('shop', () => 't', { mayLetGo: () => !isTiming });
    let waits = 0;
    const newer = openNewer(() => {
      waits += 1;
    });
    await log.append([recordAt(1, 0, 's', done)]);
    await vi.waitFor(() => expect(waits).toBe(1));
    await log.append([recordAt(2, 1, 's', done)]);
    isTiming = false;
    await log.append([recordAt(3, 2, 's', done)]);
    const database = await newer;
    expect(await asked(database.transaction('records').objectStore('records').count())).toBe(3);
    database.close();
  });

  it('is told of as what holds the newer one up', async () => {
    const older = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('held', 1);
      request.onupgradeneeded = () => request.result.createObjectStore('tablet');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const told: string[] = [];
    const events = { blocked: () => told.push('held up') };
    const opening = openDatabase('held', events, [...migrations, { name: 'planted', change() {} }]);
    await vi.waitFor(() => expect(told).toEqual(['held up']));
    older.close();
    (await opening).close();
  });
});
