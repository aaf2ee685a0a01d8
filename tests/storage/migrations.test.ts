import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { chainOf } from '../../src/domain/records/chain';
import { ChainCheck } from '../../src/domain/records/chain-check';
import type { LogRecord } from '../../src/domain/records/log-record';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { type Migration, migrations } from '../../src/storage/migrations';
import { openDatabase } from '../../src/storage/open-database';
import { recordAt } from '../support/records';

const NAME = 'old-shop';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

/** How the database of each released version was laid out, frozen: never to be made from today's migrations. */
const released: readonly ((database: IDBDatabase) => void)[] = [
  (database) => {
    const records = database.createObjectStore('records', { keyPath: ['device', 'sequence'] });
    records.createIndex('by-stream', 'stream');
    records.createIndex('by-start', ['fact.starts', 'stamp.wallMs']);
    database.createObjectStore('tablet');
  },
];

/** A morning's records, chained. */
function morning(): LogRecord[] {
  const part = { part: 't:1', partCode: 'M', targetMs: 90_000 } as const;
  const facts = [
    recordAt(1, 0, 'shop', { kind: 'part-defined', code: 'M', name: 'Müller bracket' }),
    recordAt(2, 1_000, 't:2', { kind: 'turn-started', starts: 'turn', person: 'K7', ...part }),
    recordAt(3, 91_000, 't:2', { kind: 'part-done', ...part }),
    recordAt(4, 95_000, 't:2', { kind: 'turn-ended' }),
  ];
  let chain = 0;
  return facts.map((record) => {
    chain = chainOf(record, chain);
    return { ...record, chain };
  });
}

/** A database as that release left it, with records in it. */
async function leftBy(version: number): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    const request = indexedDB.open(NAME, version);
    request.onupgradeneeded = () => released[version - 1]!(request.result);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const transaction = request.result.transaction(['records', 'tablet'], 'readwrite');
      for (const record of morning()) transaction.objectStore('records').add(record);
      transaction.objectStore('tablet').add('t', 'device');
      transaction.oncomplete = () => {
        request.result.close();
        resolve();
      };
    };
  });
}

async function expectWhole(log: IndexedDbRecordLog): Promise<void> {
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  expect(found).toEqual(morning());
  const check = new ChainCheck();
  for (const record of found) check.take(record);
  expect(check.breaks).toEqual([]);
  expect(log.device).toBe('t');
  expect(await log.readStream('t:2')).toHaveLength(3);
  expect(await log.readLatestStarts('turn', 1)).toHaveLength(1);
}

describe('a database of an earlier release', () => {
  it('is laid out here for every version there was', () => {
    expect(released).toHaveLength(migrations.length);
  });

  for (const version of released.keys()) {
    it(`of version ${version + 1} opens in this one with every record, and takes more`, async () => {
      await leftBy(version + 1);
      const log = await IndexedDbRecordLog.open(NAME, () => 'another');
      await expectWhole(log);
      await log.append([recordAt(5, 99_000, 'shop', { kind: 'person-added', code: 'K8' })]);
      expect(await log.count()).toBe(5);
      log.close();
    });

    it(`of version ${version + 1} is as it was when an upgrade breaks off, at whichever step`, async () => {
      await leftBy(version + 1);
      const steps: ((...given: Parameters<Migration['change']>) => void)[] = [
        () => {},
        (database) => database.createObjectStore('planted' as never),
        (_database, upgrade) => upgrade.objectStore('records').deleteIndex('by-stream'),
        (_database, upgrade) => {
          upgrade
            .objectStore('records')
            .clear()
            .catch(() => {});
        },
      ];
      for (const count of steps.keys()) {
        const broken: Migration = {
          name: 'planted',
          change(...given) {
            // That it broke off is told by the opening itself.
            given[1].done.catch(() => {});
            for (const step of steps.slice(0, count + 1)) step(...given);
            throw new Error('the power went');
          },
        };
        await expect(openDatabase(NAME, {}, [...migrations, broken])).rejects.toThrow();
        const log = await IndexedDbRecordLog.open(NAME, () => 'another');
        await expectWhole(log);
        log.close();
      }
    });
  }
});
