import { afterEach, describe, expect, it } from 'vitest';
import { copyToFolder } from '../../src/application/backup/copy-to-folder';
import { prepareBackup } from '../../src/application/backup/prepare-backup';
import { restoreBackup } from '../../src/application/backup/restore-backup';
import { takeSnapshot } from '../../src/application/backup/take-snapshot';
import { Bench } from '../../src/application/bench';
import type { Snapshot } from '../../src/application/ports/snapshot-store';
import { addPerson } from '../../src/application/shop/add-person';
import { handOverFile } from '../../src/device/hand-over-file';
import { localLastSeen } from '../../src/device/local-last-seen';
import { pageClock } from '../../src/device/page-clock';
import { webFolder } from '../../src/device/web-folder';
import { webSecrets } from '../../src/device/web-secrets';
import type { LogRecord } from '../../src/domain/records/log-record';
import { recordLine } from '../../src/domain/records/record-line';
import { backupFormat } from '../../src/exchange/backup-format';
import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { opfsSnapshots } from '../../src/storage/opfs-snapshots';

const SNAPSHOTS = 'snapshots-under-test';
const format = backupFormat(webSecrets());
const settled = () => new Promise((resolve) => setTimeout(resolve, 300));

async function* pieces(...texts: string[]) {
  for (const text of texts) yield new TextEncoder().encode(text);
}

const textOf = async (source: { stream(): ReadableStream<Uint8Array<ArrayBuffer>> }) =>
  new Response(source.stream()).text();

async function everything(log: { readAll(): AsyncIterable<LogRecord[]> }): Promise<string[]> {
  const found: string[] = [];
  for await (const batch of log.readAll()) found.push(...batch.map(recordLine));
  return found;
}

/** The picker needs a person; a folder of the browser's own is a folder all the same. */
async function pickFolder(name: string): Promise<FileSystemDirectoryHandle> {
  const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(name, { create: true });
  Object.assign(globalThis, { showDirectoryPicker: async () => folder });
  return folder;
}

async function shopOf(name: string, people: number) {
  const log = await IndexedDbRecordLog.open(name, () => 'tablet-b');
  const bench = await Bench.open(
    log,
    pageClock('run-b', () => 0),
  );
  for (let place = 0; place < people; place += 1) addPerson(bench, `${name}${place}`);
  await settled();
  return { log, bench };
}

afterEach(async () => {
  await (await navigator.storage.getDirectory()).removeEntry(SNAPSHOTS, { recursive: true }).catch(() => {});
});

const lastSeen = localLastSeen;

describe('snapshots in the browser’s private file system', () => {
  const first: Snapshot = { generation: 1, day: '2026-03-02', records: 12 };
  const second: Snapshot = { generation: 10, day: '2026-03-03', records: 13 };

  it('give back what was written, by generation, and forget what was removed', async () => {
    const store = opfsSnapshots(SNAPSHOTS)!;
    expect(await store.list()).toEqual([]);
    await store.write(second, pieces('two'));
    await store.write(first, pieces('one, ', 'in two pieces'));
    expect(await store.list()).toEqual([first, second]);
    expect(await textOf(await store.read(first))).toBe('one, in two pieces');
    await store.remove(first);
    expect(await opfsSnapshots(SNAPSHOTS)!.list()).toEqual([second]);
  });

  it('are packed', async () => {
    const store = opfsSnapshots(SNAPSHOTS)!;
    await store.write(first, pieces('part-done '.repeat(100_000)));
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(SNAPSHOTS);
    const file = await (await folder.getFileHandle('000001_2026-03-02_12.gz')).getFile();
    expect(file.size).toBeLessThan(20_000);
    expect((await textOf(await store.read(first))).length).toBe(1_000_000);
  });

  it('leave nothing behind when what is written breaks off', async () => {
    const store = opfsSnapshots(SNAPSHOTS)!;
    async function* breaking() {
      yield* pieces('some');
      throw new Error('the log is gone');
    }
    await expect(store.write(first, breaking())).rejects.toThrow('the log is gone');
    expect(await store.list()).toEqual([]);
  });

  it('do not count a file that was made and never finished, and clear it away with the next', async () => {
    const store = opfsSnapshots(SNAPSHOTS)!;
    await store.write(first, pieces('one'));
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(SNAPSHOTS);
    // As a kill between the making of the file and its end leaves it.
    await folder.getFileHandle('000009_2026-03-09_99.gz', { create: true });
    expect(await store.list()).toEqual([first]);
    await store.write(second, pieces('two'));
    await expect(folder.getFileHandle('000009_2026-03-09_99.gz')).rejects.toThrow();
  });

  it('bring a wiped log back, record by record', async () => {
    const { log, bench } = await shopOf('snapped', 30);
    const tools = {
      format,
      handOver: handOverFile,
      folder: null,
      release: '0',
      lastSeen,
      snapshots: opfsSnapshots(SNAPSHOTS),
    };
    const taken = await takeSnapshot(bench, tools);
    expect(taken).toMatchObject({ ok: true, snapshot: { generation: 1, records: 30 } });
    if (!taken.ok) return;
    const empty = await IndexedDbRecordLog.open('wiped', () => 'tablet-new');
    const source = await tools.snapshots!.read(taken.snapshot);
    expect(await restoreBackup({ log: empty, busy: false }, tools, source)).toMatchObject({
      ok: true,
      plan: { added: 30 },
    });
    expect(await everything(empty)).toEqual(await everything(log));
    const file = await tools.snapshots!.read(taken.snapshot);
    expect(await restoreBackup({ log: empty, busy: false }, tools, file)).toMatchObject({
      plan: { added: 0, alreadyThere: 30 },
    });
  });
});

describe('a folder outside', () => {
  it('is kept for the next page, written, read back, and forgotten', async () => {
    const chosen = await pickFolder('outside-one');
    const folder = webFolder()!;
    await folder.forget();
    expect(await folder.chosen()).toBeNull();
    await expect(folder.write('x.txt', pieces('x'))).rejects.toThrow('no folder is chosen');
    expect(await folder.choose()).toBe(true);
    expect(await webFolder()!.chosen()).toEqual({ name: 'outside-one', mayWrite: true });
    expect(await folder.read('copy.txt')).toBeNull();
    await folder.write('copy.txt', pieces('first, ', 'whole'));
    expect(await textOf((await folder.read('copy.txt'))!)).toBe('first, whole');
    expect(await (await (await chosen.getFileHandle('copy.txt')).getFile()).text()).toBe('first, whole');
    await folder.forget();
    expect(await webFolder()!.chosen()).toBeNull();
  });

  it('keeps the copy that is there when the next one breaks off', async () => {
    await pickFolder('outside-two');
    const folder = webFolder()!;
    await folder.choose();
    await folder.write('copy.txt', pieces('yesterday'));
    async function* breaking() {
      yield* pieces('half of ');
      throw new Error('the log is gone');
    }
    await expect(folder.write('copy.txt', breaking())).rejects.toThrow('the log is gone');
    expect(await textOf((await folder.read('copy.txt'))!)).toBe('yesterday');
  });

  it('is not chosen when the person turns away', async () => {
    Object.assign(globalThis, {
      showDirectoryPicker: async () => {
        throw new DOMException('closed', 'AbortError');
      },
    });
    expect(await webFolder()!.choose()).toBe(false);
  });

  it('takes a whole copy of the log, and another browser restores it', async () => {
    await pickFolder('outside-three');
    const { log, bench } = await shopOf('copied', 25);
    const folder = webFolder()!;
    await folder.choose();
    const tools = { format, handOver: handOverFile, folder, release: '0', snapshots: null, lastSeen };
    const before = await everything(log);
    const copy = await copyToFolder(bench, tools);
    expect(copy).toMatchObject({ ok: true, folder: 'outside-three', summary: { records: 25 } });
    if (!copy.ok) return;
    const other = await IndexedDbRecordLog.open('elsewhere', () => 'tablet-new');
    const source = (await folder.read(copy.name))!;
    expect(await restoreBackup({ log: other, busy: false }, tools, source)).toMatchObject({ ok: true });
    expect(await everything(other)).toEqual(before);
  });
});

describe('a file for the person', () => {
  it('is gathered, locked, and opens again with the browser’s own cryptography', async () => {
    const { bench } = await shopOf('handed', 20);
    const tools = { format, handOver: handOverFile, folder: null, release: '0', snapshots: null, lastSeen };
    const ready = await prepareBackup(bench, tools, 'three blunt drills');
    expect(ready).toMatchObject({ ok: true, summary: { records: 20 } });
    if (!ready.ok) return;
    expect(ready.file.name).toMatch(/^pacewright-tablet-b-\d{4}-\d\d-\d\d-locked\.txt$/);
    expect(await format.read(ready.file.source, { passphrase: 'three' })).toEqual({
      ok: false,
      fault: { code: 'pass-phrase-wrong' },
    });
  });

  it('of 20 MB is gathered byte by byte as it came', async () => {
    async function* many() {
      for (let place = 0; place < 2_000; place += 1) yield new Uint8Array(10_000).fill(place % 251);
    }
    const file = await handOverFile.gather('large.txt', many());
    expect(file.bytes).toBe(20_000_000);
    const bytes = new Uint8Array(await new Response(file.source.stream()).arrayBuffer());
    let wrong = 0;
    for (let at = 0; at < bytes.length; at += 1) if (bytes[at] !== Math.floor(at / 10_000) % 251) wrong += 1;
    expect(wrong).toBe(0);
  });

  it('tells a person who turned away from a system that would not take it', async () => {
    const file = await handOverFile.gather('x.txt', pieces('x'));
    const answers = [
      async () => {},
      async () => {
        throw new DOMException('turned away', 'AbortError');
      },
      async () => {
        throw new DOMException('no tap', 'NotAllowedError');
      },
    ];
    const found: string[] = [];
    for (const share of answers) {
      Object.defineProperty(navigator, 'share', { value: share, configurable: true });
      found.push(await file.share());
    }
    expect(found).toEqual(['shared', 'cancelled', 'refused']);
  });
});
