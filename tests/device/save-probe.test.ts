import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { saveTimes } from '../../src/device/save-probe';

const { transaction } = IDBDatabase.prototype;
let begun: { database: string; asked: Parameters<IDBDatabase['transaction']> }[];

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  begun = [];
  IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...asked) {
    if (asked[1] === 'readwrite') begun.push({ database: this.name, asked });
    return transaction.apply(this, asked);
  };
});
afterEach(() => {
  IDBDatabase.prototype.transaction = transaction;
});

describe('the time to save', () => {
  it('is that of one strict write after another, each as a tap waits for it', async () => {
    const times = await saveTimes(7);
    expect(times).toHaveLength(7);
    for (const ms of times) expect(ms).toBeGreaterThanOrEqual(0);
    expect(begun).toHaveLength(7);
    for (const { asked } of begun) expect(asked.slice(1)).toEqual(['readwrite', { durability: 'strict' }]);
  });

  it('is measured in a place of its own: no database of records is opened or made', async () => {
    await saveTimes(2);
    await saveTimes(2);
    expect(new Set(begun.map(({ database }) => database))).toEqual(new Set(['pacewright-probe']));
    expect((await indexedDB.databases()).map(({ name }) => name)).toEqual(['pacewright-probe']);
  });

  it('leaves one entry behind, however often it is measured', async () => {
    await saveTimes(3);
    await saveTimes(3);
    const database = await new Promise<IDBDatabase>((resolve) => {
      const asked = indexedDB.open('pacewright-probe');
      asked.onsuccess = () => resolve(asked.result);
    });
    const count = await new Promise<number>((resolve) => {
      const asked = database.transaction('probe').objectStore('probe').count();
      asked.onsuccess = () => resolve(asked.result);
    });
    database.close();
    expect(count).toBe(1);
  });

  it('that cannot be measured is an error, not a time', async () => {
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...asked) {
      if (asked[1] === 'readwrite') throw new DOMException('planted', 'QuotaExceededError');
      return transaction.apply(this, asked);
    };
    await expect(saveTimes(2)).rejects.toThrow('planted');
  });
});
