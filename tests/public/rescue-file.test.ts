import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BackupAbout } from '../../src/application/ports/backup-format';
import type { LogRecord } from '../../src/domain/records/log-record';
import { RECORD_VERSION } from '../../src/domain/records/upgrade-record';
import { backupFormat } from '../../src/exchange/backup-format';
import { OWN_DATABASE, OWN_JOURNAL } from '../../src/storage/database-names';
import { encodeLine } from '../../src/storage/journal/journal-line';
import { arbitraryShop } from '../support/arbitrary-records';
import { about, type Bytes, backupOf, quickSecrets, sourceOf } from '../support/backup-files';

/** What the plain script of the rescue page exports; it has no types of its own. */
interface RescueFile {
  readonly names: { readonly database: string; readonly journal: string; readonly reserve: string };
  readonly FORMAT_VERSION: number;
  backupPieces(records: readonly LogRecord[], about: BackupAbout): Iterable<Bytes>;
  journalRecord(line: string): LogRecord | null;
  merged(...shelves: readonly LogRecord[][]): LogRecord[];
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
