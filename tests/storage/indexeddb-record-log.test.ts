import 'fake-indexeddb/auto';
import { forceCloseDatabase, IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { recordAt } from '../support/records';
import { recordLogContract } from './record-log-contract';

const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

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
    const taken = await (log as unknown as { database: Promise<unknown> }).database;
    // idb wraps the handle; the simulation needs the bare one.
    const { unwrap } = await import('idb');
    forceCloseDatabase(unwrap(taken as never) as never);
    await log.append([recordAt(2, 1, 's', done)]);
    expect((await log.readStream('s')).map(({ sequence }) => sequence)).toEqual([1, 2]);
  });

  it('lets go of the database when a newer version wants it', async () => {
    const log = await IndexedDbRecordLog.open('shop', () => 't');
    await log.append([recordAt(1, 0, 's', done)]);
    const newer = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('shop', 99);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error('blocked'));
    });
    expect(newer.version).toBe(99);
    newer.close();
    await expect(log.append([recordAt(2, 1, 's', done)])).rejects.toThrow();
  });
});
