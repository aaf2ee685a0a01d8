import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planRestore } from '../../src/application/backup/plan-restore';
import { demoRecords } from '../../src/demo/demo-records';
import type { LogRecord } from '../../src/domain/records/log-record';
import { recordLine } from '../../src/domain/records/record-line';
import { backupFormat } from '../../src/exchange/backup-format';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { arbitraryShop } from '../support/arbitrary-records';
import { about, backupOf, joined, sourceOf } from '../support/backup-files';
import { recordAt } from '../support/records';

const format = backupFormat(null);
const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;

async function recordsIn(bytes: Uint8Array<ArrayBuffer>): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  const reading = await format.read(sourceOf(bytes), { take: (records) => void found.push(...records) });
  expect(reading).toMatchObject({ ok: true });
  return found;
}

describe('a backup file', () => {
  it('gives back 1,000 random shops record by record, and writes them again byte by byte', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryShop, async (shop) => {
        const bytes = await backupOf(format, shop);
        const found = await recordsIn(bytes);
        expect(found.map(recordLine)).toEqual(shop.map(recordLine));
        expect(Buffer.compare(await backupOf(format, found), bytes)).toBe(0);
      }),
      { numRuns: 1_000 },
    );
  });

  it('is a header, a line a record, and a last line with the SHA-256 of all before it', async () => {
    const shop = demoRecords().slice(0, 50);
    const text = new TextDecoder().decode(await backupOf(format, shop));
    const lines = text.split('\n');
    expect(JSON.parse(lines[0]!)).toEqual({ format: 'pacewright-backup', version: 1, ...about });
    expect(lines.slice(1, 51)).toEqual(shop.map(recordLine));
    expect(JSON.parse(lines[51]!)).toEqual({
      end: 'pacewright-backup',
      records: 50,
      devices: [{ device: 'demo', records: 50, first: 1, last: 50 }],
      breakCount: 0,
      breaks: [],
      // By Node's own SHA-256.
      sha256: createHash('sha256')
        .update(text.slice(0, text.indexOf('{"end":')))
        .digest('hex'),
    });
    expect(lines.slice(52)).toEqual(['']);
  });

  it('takes every record of the demo shop', async () => {
    const shop = demoRecords();
    async function* batches() {
      yield shop;
    }
    const writing = format.write(batches(), about);
    const bytes = await joined(writing.chunks);
    expect(writing.leftOut()).toBe(0);
    expect(await recordsIn(bytes)).toHaveLength(shop.length);
  });

  it('holds an empty shop too', async () => {
    const reading = await format.read(sourceOf(await backupOf(format, [])));
    expect(reading).toMatchObject({ ok: true, summary: { records: 0, devices: [] } });
  });

  it('is read the same however the bytes are cut into pieces', async () => {
    const bytes = await backupOf(format, demoRecords().slice(0, 30));
    for (const size of [1, 2, 3, 7, 100, bytes.length]) {
      let at = 0;
      const stream = () =>
        new ReadableStream<Uint8Array<ArrayBuffer>>({
          pull(controller) {
            if (at >= bytes.length) controller.close();
            else controller.enqueue(bytes.slice(at, at + size));
            at += size;
          },
        });
      expect(await format.read({ stream })).toMatchObject({ ok: true, summary: { records: 30 } });
    }
  });

  it('says of a log with a break what the break is, and is sound all the same', async () => {
    const shop = demoRecords().slice(0, 30);
    const damaged = [...shop.slice(0, 9), ...shop.slice(11)];
    const reading = await format.read(sourceOf(await backupOf(format, damaged)));
    // Records 10 and 11 are left out, so 10 is the first that is missing.
    expect(reading).toMatchObject({
      ok: true,
      summary: { breakCount: 1, breaks: [{ device: 'demo', sequence: 10, why: 'missing' }] },
    });
  });

  it('leaves a record out that no reader would take, says so, and keeps the others', async () => {
    const odd = recordAt(1, 0, 't:1', { ...done, targetMs: Number.NaN });
    const sound = recordAt(2, 1, 't:1', done);
    async function* batches() {
      yield [odd, sound];
    }
    const writing = format.write(batches(), about);
    const bytes = await joined(writing.chunks);
    expect(writing.leftOut()).toBe(1);
    expect((await recordsIn(bytes)).map(recordLine)).toEqual([recordLine(sound)]);
  });

  it('tells what the log has from what it lacks, and where another record has the key', async () => {
    const shop = demoRecords().slice(0, 40);
    const log = new InMemoryRecordLog('t');
    await log.append([...shop.slice(0, 10), ...shop.slice(20, 25), { ...shop[30]!, chain: 1 }]);
    await log.append([recordAt(1, 0, 'aa:1', done, { device: 'aa' })]);
    await log.append([recordAt(1, 0, 'zz:1', done, { device: 'zz' })]);
    const planned = await planRestore(log, { format }, sourceOf(await backupOf(format, shop)));
    expect(planned).toMatchObject({
      ok: true,
      plan: {
        // 40 in the file: 15 are there, 1 clashes.
        added: 24,
        alreadyThere: 15,
        clashCount: 1,
        clashes: [{ device: 'demo', sequence: 31 }],
        missing: [
          { device: 'demo', from: 11, to: 20 },
          { device: 'demo', from: 26, to: 30 },
          { device: 'demo', from: 32, to: 40 },
        ],
      },
    });
  });
});
