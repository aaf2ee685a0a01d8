import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BackupAbout } from '../../src/application/ports/backup-format';
import { takeFromReserve } from '../../src/application/take-from-reserve';
import { chainOf } from '../../src/domain/records/chain';
import type { LogRecord } from '../../src/domain/records/log-record';
import { RECORD_VERSION } from '../../src/domain/records/upgrade-record';
import { backupFormat } from '../../src/exchange/backup-format';
import { OWN_DATABASE, OWN_JOURNAL } from '../../src/storage/database-names';
import { healShelves } from '../../src/storage/heal-shelves';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { encodeLine } from '../../src/storage/journal/journal-line';
import { everything } from '../domain/study/study-at-the-bench';
import { ArrayFile, journalOn } from '../storage/in-memory-journal';
import { arbitraryShop } from '../support/arbitrary-records';
import { about, type Bytes, backupOf, quickSecrets, sourceOf } from '../support/backup-files';
import { recordAt } from '../support/records';

/** What the plain script of the rescue page exports; it has no types of its own. */
interface RescueFile {
  readonly names: { readonly database: string; readonly journal: string; readonly reserve: string };
  readonly FORMAT_VERSION: number;
  backupPieces(records: readonly LogRecord[], about: BackupAbout): Iterable<Bytes>;
  journalRecord(line: string): LogRecord | null;
  merged(
    database: readonly LogRecord[],
    journal?: readonly LogRecord[],
    reserve?: readonly LogRecord[],
  ): LogRecord[];
}

const src = fileURLToPath(new URL('../../src/', import.meta.url));
const script = path.join(src, 'public/rescue-file.js');
const rescue: RescueFile = await import(/* @vite-ignore */ script);
const format = backupFormat(quickSecrets());

/** By device and sequence, as a log reads them. */
const inOrder = (shop: readonly LogRecord[]) => rescue.merged([...shop]);
const fileOf = async (records: readonly LogRecord[]): Promise<Bytes> =>
  new Uint8Array(await new Blob([...rescue.backupPieces(records, about)]).arrayBuffer());

describe('the file that the rescue page writes', () => {
  it('is byte for byte the one that the app writes: 300 random shops', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryShop, async (shop) => {
        const records = inOrder(shop);
        expect(Buffer.from(await fileOf(records)).equals(Buffer.from(await backupOf(format, records)))).toBe(
          true,
        );
      }),
      { numRuns: 300 },
    );
  });

  it('says of a log with breaks what the app says of it', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryShop, fc.nat(), fc.nat(), async (shop, gone, other) => {
        const records = inOrder(shop)
          .filter((_, place) => place !== gone % shop.length)
          .map((record, place) => (place === other % shop.length ? { ...record, chain: 1 } : record));
        const file = await fileOf(records);
        expect(Buffer.from(file).equals(Buffer.from(await backupOf(format, records)))).toBe(true);
        expect(await format.read(sourceOf(file))).toMatchObject({ ok: true });
      }),
      { numRuns: 100 },
    );
  });

  it('has the version of the records that the app writes, and the names of its shelves', () => {
    expect(rescue.FORMAT_VERSION).toBe(RECORD_VERSION);
    const reserve = readFileSync(path.join(src, 'device/local-reserve.ts'), 'utf8');
    expect(rescue.names.database).toBe(OWN_DATABASE);
    expect(rescue.names.journal).toBe(OWN_JOURNAL);
    expect(reserve).toContain(`'${rescue.names.reserve}'`);
  });

  it('takes a record from whichever shelf has it, once, and no torn line', () => {
    fc.assert(
      fc.property(arbitraryShop, fc.nat(), (shop, cut) => {
        const records = inOrder(shop);
        fc.pre(records.length > 0);
        const lines = records.map((record) =>
          encodeLine({ own: { device: record.device, sequence: record.sequence }, record }).slice(0, -1),
        );
        const fromJournal = lines.map(rescue.journalRecord);
        expect(fromJournal).toEqual(records);
        const place = cut % records.length;
        const rest = records.filter((_, at) => at !== place);
        expect(rescue.merged(rest, [fromJournal[place]!], records)).toEqual(records);
        expect(rescue.journalRecord(lines[place]!.slice(0, -1))).toBeNull();
      }),
      { numRuns: 100 },
    );
  });
});

/** People, by their codes, as one tab adds them behind what it found; the third of them is taken back by its key. */
function added(behind: readonly LogRecord[], codes: readonly string[]): LogRecord[] {
  const records = [...behind];
  for (const code of codes) {
    const last = records.at(-1) ?? { sequence: 0, chain: 0 };
    const sequence = last.sequence + 1;
    const isThird = records.length === behind.length + 2;
    const record = recordAt(
      sequence,
      // The same moment in whatever tab: two of them may say the same.
      1_000,
      'shop',
      isThird
        ? { kind: 'part-retired', part: `t:${sequence - 1}`, retired: true }
        : { kind: 'person-added', code },
    );
    records.push({ ...record, chain: chainOf(record, last.chain) });
  }
  return records;
}
const told = (records: readonly LogRecord[]) =>
  records.map(({ fact }) =>
    fact.kind === 'person-added' ? fact.code : fact.kind === 'part-retired' ? fact.part : '',
  );

describe('shelves of which another tab wrote to one alone', () => {
  const before = added([], ['K1', 'K2']);
  const inDatabase = added(before, ['A1', 'A2']);
  const elsewhere = added(before, ['B1', 'B2', 'of B2', 'B4']);

  it('give the taps of both, those of the reserve at the end and with what they say of one another', async () => {
    const records = rescue.merged(inDatabase, [], elsewhere.slice(2));
    expect(told(records)).toEqual(['K1', 'K2', 'A1', 'A2', 'B1', 'B2', 't:6', 'B4']);
    expect(await format.read(sourceOf(await fileOf(records)))).toMatchObject({
      ok: true,
      summary: { breakCount: 0 },
    });
  });

  it('give the taps of the journal at the end, also those that go on from one whose number another has', () => {
    expect(told(rescue.merged(inDatabase, elsewhere))).toEqual(
      told(rescue.merged(inDatabase, [], elsewhere)),
    );
  });

  it('give each once, that lies in journal and reserve, or was moved before', () => {
    const once = rescue.merged(inDatabase, elsewhere);
    expect(rescue.merged(inDatabase, elsewhere, elsewhere)).toEqual(once);
    expect(rescue.merged(once, elsewhere, elsewhere)).toEqual(once);
  });

  it('give the last line of a number of the journal its number, and one under it at the end', () => {
    const records = rescue.merged(before, [...elsewhere.slice(2, 4), ...inDatabase.slice(2)]);
    expect(records.slice(0, 4)).toEqual(inDatabase);
    expect(told(records)).toEqual(['K1', 'K2', 'A1', 'A2', 'B1', 'B2']);
  });

  it('give what the app has once it has opened: 300 random tablets', async () => {
    const codes = fc.array(fc.constantFrom('K1', 'K2', 'K3'), { maxLength: 5 });
    const cut = fc.nat(6);
    const tablet = fc.tuple(codes, codes, codes, codes, fc.boolean(), cut, cut);
    await fc.assert(
      fc.asyncProperty(tablet, async ([shared, a, b, c, isCopied, held, hole]) => {
        const root = added([], ['K0', ...shared]);
        const [first, second, third] = [added(root, a), added(root, b), added(root, c)];
        const database = new InMemoryRecordLog('t');
        await database.append(first);
        const lines = [
          ...second.filter(({ sequence }) => sequence !== hole + 2),
          ...(isCopied ? first.slice(root.length) : []),
        ];
        const inReserve = [...second.slice(-held), ...third.slice(root.length)];
        const own = { device: 't', sequence: Math.max(...lines.map(({ sequence }) => sequence)) };
        const file = new ArrayFile();
        file.bytes = new TextEncoder().encode(lines.map((record) => encodeLine({ own, record })).join(''));
        let reserve = inReserve;
        const shelf = {
          hold(next: readonly LogRecord[]) {
            reserve = [...next];
            return true;
          },
          read: () => reserve,
        };
        const rescued = rescue.merged(first, lines, inReserve);
        await healShelves(database, journalOn(file), shelf);
        await takeFromReserve(database, shelf);
        expect(rescued).toEqual(await everything(database));
      }),
      { numRuns: 300 },
    );
  });
});

describe('the pages without the bundle', () => {
  it('run under the policy of the app, with no script inside them', () => {
    const policy = /const policy = \[([\s\S]*?)\]\.join/.exec(
      readFileSync(path.join(src, '../.config/vite.config.ts'), 'utf8'),
    )?.[1];
    const rules = [...policy!.matchAll(/"([^"]+)"/g)].map(([, rule]) => rule).join('; ');
    const page = readFileSync(path.join(src, 'public/rescue.html'), 'utf8');
    expect(page).toContain(`content="${rules}"`);
    for (const html of [page, readFileSync(path.join(src, 'index.html'), 'utf8')]) {
      expect(html.match(/<script(?![^>]*\bsrc=)/g)).toBeNull();
      expect(html).not.toMatch(/<style|\bon[a-z]+=/);
    }
  });
});
