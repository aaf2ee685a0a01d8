import { describe, expect, it } from 'vitest';
import { copyToFolder } from '../../../src/application/backup/copy-to-folder';
import { downloadBackup } from '../../../src/application/backup/download-backup';
import { prepareBackup } from '../../../src/application/backup/prepare-backup';
import { readCopyAge } from '../../../src/application/backup/read-copy-age';
import { shareBackup } from '../../../src/application/backup/share-backup';
import { Bench } from '../../../src/application/bench';
import { addPerson } from '../../../src/application/shop/add-person';
import { definePart } from '../../../src/application/shop/define-part';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { everythingIn } from '../../support/backup-files';
import { fakeTools, spoilt } from '../../support/backup-tools';
import { damagedLog } from '../../support/damaged-log';
import { FakeClock } from '../../support/fake-clock';

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));
/** FakeClock's day and device t. */
const TODAY = 'pacewright-t-2026-03-02.txt';
const BESIDE = 'pacewright-t-2026-03-02-2.txt';

async function shopOf(people: number) {
  const clock = new FakeClock();
  const log = new InMemoryRecordLog('t');
  const bench = await Bench.open(log, clock);
  definePart(bench, 'M', 'Medium door');
  for (let place = 1; place < people; place += 1) addPerson(bench, `P${place}`);
  await settled();
  return { bench, clock, log, ...fakeTools() };
}

async function prepared(shop: Awaited<ReturnType<typeof shopOf>>, passphrase?: string) {
  const outcome = await prepareBackup(shop.bench, shop.tools, passphrase);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

describe('a file for the person', () => {
  it('holds every record, is read back before it is offered, and is noted only when it was taken', async () => {
    const shop = await shopOf(10);
    const ready = await prepared(shop);
    expect(ready).toMatchObject({ summary: { records: 10, device: 't', release: '0.1.0' }, unsaved: 0 });
    expect(ready.file.name).toBe(TODAY);
    shop.handOver.answer = 'cancelled';
    expect(await shareBackup(shop.bench, ready)).toBe('cancelled');
    await settled();
    expect(await shop.log.count()).toBe(10);
    shop.handOver.answer = 'shared';
    expect(await shareBackup(shop.bench, ready)).toBe('shared');
    await settled();
    expect((await everythingIn(shop.log)).at(-1)?.fact).toEqual({
      kind: 'copy-made-outside',
      how: 'shared',
      records: 10,
      upTo: 10,
    });
    shop.clock.pass(3_600_000);
    expect(await readCopyAge(shop.bench)).toMatchObject({ ageMs: 3_600_000, recordsSince: 0, how: 'shared' });
  });

  it('is downloaded where nothing can be shared', async () => {
    const shop = await shopOf(3);
    downloadBackup(shop.bench, await prepared(shop));
    await settled();
    expect(shop.handOver.downloads).toEqual([TODAY]);
    expect(await readCopyAge(shop.bench)).toMatchObject({ isCopied: true, how: 'downloaded' });
  });

  it('is locked with a pass-phrase, and then says so in its name', async () => {
    const shop = await shopOf(3);
    const { file } = await prepared(shop, 'three blunt drills');
    expect(file.name).toBe('pacewright-t-2026-03-02-locked.txt');
    expect(await shop.tools.format.read(file.source)).toMatchObject({
      fault: { code: 'pass-phrase-needed' },
    });
  });

  it('is not offered when it does not read back', async () => {
    const shop = await shopOf(10);
    shop.handOver.spoil = spoilt;
    expect(await prepareBackup(shop.bench, shop.tools)).toMatchObject({ ok: false, reason: 'not-verified' });
  });

  it('says what the log said when it cannot be read', async () => {
    const shop = await shopOf(3);
    shop.log.readAll = async function* () {
      yield [];
      throw new DOMException('closed', 'InvalidStateError');
    };
    await expect(prepareBackup(shop.bench, shop.tools)).resolves.toEqual({
      ok: false,
      reason: 'not-written',
      problem: 'InvalidStateError: closed',
    });
  });
});

describe('copyToFolder', () => {
  it('writes a day’s file, reads it back, and notes the copy', async () => {
    const shop = await shopOf(10);
    expect(await copyToFolder(shop.bench, shop.tools)).toMatchObject({
      ok: true,
      folder: 'Backups',
      name: TODAY,
      summary: { records: 10 },
    });
    await settled();
    expect(await readCopyAge(shop.bench)).toMatchObject({ how: 'folder', recordsSince: 0, isDue: false });
    shop.clock.pass(24 * 3_600_000);
    await copyToFolder(shop.bench, shop.tools);
    expect([...shop.folder.files.keys()]).toEqual([TODAY, 'pacewright-t-2026-03-03.txt']);
  });

  it('asks for a folder, and for permission, before it touches anything', async () => {
    const shop = await shopOf(3);
    shop.folder.mayWrite = false;
    expect(await copyToFolder(shop.bench, shop.tools)).toEqual({
      ok: false,
      reason: 'permission-needed',
      folder: 'Backups',
    });
    shop.folder.name = null;
    expect(await copyToFolder(shop.bench, shop.tools)).toEqual({ ok: false, reason: 'no-folder' });
    const without = { ...shop.tools, folder: null };
    expect(await copyToFolder(shop.bench, without)).toEqual({ ok: false, reason: 'no-folder' });
    expect(shop.folder.files.size).toBe(0);
  });

  it('does not replace today’s copy by one with far fewer records', async () => {
    const full = await shopOf(100);
    await copyToFolder(full.bench, full.tools);
    const before = full.folder.files.get(TODAY);
    // The log of the same tablet after a loss: 79 of 100 is a loss of more than a fifth, 80 is not.
    const lost = await shopOf(79);
    expect(await copyToFolder(lost.bench, full.tools)).toEqual({
      ok: false,
      reason: 'count-collapsed',
      records: 79,
      before: 100,
    });
    expect(full.folder.files.get(TODAY)).toBe(before);
  });

  it('writes beside today’s copy when that has a record more than the log, and goes on there', async () => {
    const full = await shopOf(100);
    await copyToFolder(full.bench, full.tools);
    const before = full.folder.files.get(TODAY);
    const fewer = await shopOf(99);
    for (let copies = 0; copies < 2; copies += 1) {
      expect(await copyToFolder(fewer.bench, full.tools)).toMatchObject({ ok: true, name: BESIDE });
      await settled();
    }
    expect(full.folder.files.get(TODAY)).toBe(before);
    expect([...full.folder.files.keys()]).toEqual([TODAY, BESIDE]);
  });

  it('writes beside today’s copy when the log has gone on otherwise under the numbers it had lost', async () => {
    const full = await shopOf(100);
    await copyToFolder(full.bench, full.tools);
    const before = full.folder.files.get(TODAY);
    const other = await shopOf(95);
    for (let place = 0; place < 10; place += 1) addPerson(other.bench, `Q${place}`);
    await settled();
    expect(await copyToFolder(other.bench, full.tools)).toMatchObject({ ok: true, name: BESIDE });
    expect(full.folder.files.get(TODAY)).toBe(before);
  });

  it('leaves today’s copy where the log has as many records, but a copy can hold fewer of them', async () => {
    const shop = await shopOf(100);
    await copyToFolder(shop.bench, shop.tools);
    await settled();
    const before = shop.folder.files.get(TODAY);
    const bench = await Bench.open(await damagedLog(shop.log, 90), shop.clock);
    expect(await copyToFolder(bench, shop.tools)).toEqual({
      ok: false,
      reason: 'count-collapsed',
      records: 11,
      before: 100,
    });
    expect(shop.folder.files.get(TODAY)).toBe(before);
    expect(await readCopyAge(shop.bench)).toMatchObject({ recordsSince: 0 });
  });

  it('replaces a copy of today that is damaged', async () => {
    const shop = await shopOf(10);
    shop.folder.files.set(TODAY, new Uint8Array([1, 2, 3]));
    expect(await copyToFolder(shop.bench, shop.tools)).toMatchObject({ ok: true });
  });

  it('notes no copy where an older file is read back, whether it has fewer records or was made earlier', async () => {
    const shop = await shopOf(10);
    await copyToFolder(shop.bench, shop.tools);
    await settled();
    // A share that says to have written, and hands out what it had.
    shop.folder.write = async (_, chunks) => {
      for await (const _piece of chunks);
    };
    const refused = { ok: false, reason: 'not-verified', fault: { code: 'contents-changed' } };
    expect(await copyToFolder(shop.bench, shop.tools)).toEqual(refused);
    const made = await everythingIn(shop.log);
    expect(made).toHaveLength(11);
    // The log has just what the file there has: only when it was made tells them apart.
    const same = new InMemoryRecordLog('t');
    await same.append(made.slice(0, 10));
    const bench = await Bench.open(same, shop.clock);
    shop.clock.pass(1_000);
    expect(await copyToFolder(bench, shop.tools)).toEqual(refused);
    expect(await same.count()).toBe(10);
  });

  it('notes no copy that does not read back or could not be written', async () => {
    const shop = await shopOf(10);
    shop.folder.spoil = spoilt;
    expect(await copyToFolder(shop.bench, shop.tools)).toMatchObject({ reason: 'not-verified' });
    shop.folder.write = async () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    expect(await copyToFolder(shop.bench, shop.tools)).toEqual({
      ok: false,
      reason: 'not-written',
      problem: 'QuotaExceededError: full',
    });
    await settled();
    expect(await readCopyAge(shop.bench)).toMatchObject({ isCopied: false });
  });
});
