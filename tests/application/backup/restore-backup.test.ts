import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planRestore } from '../../../src/application/backup/plan-restore';
import { ALL_AT_ONCE, restoreBackup } from '../../../src/application/backup/restore-backup';
import type { RecordLog } from '../../../src/application/ports/record-log';
import { chainOf } from '../../../src/domain/records/chain';
import type { Fact, LogRecord } from '../../../src/domain/records/log-record';
import { recordLine } from '../../../src/domain/records/record-line';
import { backupFormat } from '../../../src/exchange/backup-format';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { IndexedDbRecordLog } from '../../../src/storage/indexeddb-record-log';
import { TwoShelfRecordLog } from '../../../src/storage/two-shelf-record-log';
import { ArrayFile, contentOf, journalOn } from '../../storage/in-memory-journal';
import { arbitraryShop } from '../../support/arbitrary-records';
import { backupOf, everythingIn, sourceOf } from '../../support/backup-files';
import { MORNING_MS, stampAt } from '../../support/records';

const format = backupFormat(null);
const MINUTE_MS = 60_000;
const inHand = { part: 'p', partCode: 'M', targetMs: null };

const restore = async (log: RecordLog, records: readonly LogRecord[]) =>
  restoreBackup({ log, busy: false }, { format }, sourceOf(await backupOf(format, records)));

const linesOf = async (log: RecordLog) => (await everythingIn(log)).map(recordLine);

/** Records of one tablet, chained: a turn of K7 from one minute to another, with a tap a second. */
function tablet(device: string, fromMin: number, taps: number, toMin: number): LogRecord[] {
  let chain = 0;
  const facts: [number, Fact][] = [
    [fromMin * MINUTE_MS, { kind: 'turn-started', starts: 'turn', person: 'K7', ...inHand }],
    ...Array.from({ length: taps }, (_, tap): [number, Fact] => [
      fromMin * MINUTE_MS + tap,
      { kind: 'part-done', ...inHand },
    ]),
    [toMin * MINUTE_MS, { kind: 'turn-ended' }],
  ];
  return facts.map(([ms, fact], place) => {
    const record = { device, sequence: place + 1, stream: `${device}:1`, stamp: stampAt(ms), fact };
    chain = chainOf(record, chain);
    return { ...record, chain };
  });
}

/** A log that refuses the writes of these numbers, from 1. */
class RefusingLog extends InMemoryRecordLog {
  writes = 0;
  constructor(private readonly refused: (write: number, records: readonly LogRecord[]) => boolean) {
    super('own');
  }
  override async append(records: readonly LogRecord[]): Promise<void> {
    this.writes += 1;
    if (this.refused(this.writes, records)) throw new DOMException('no room', 'QuotaExceededError');
    await super.append(records);
  }
}

describe('the plan of a restore', () => {
  it('names the newest moment of another tablet that would come in, and none of the own or of what is here', async () => {
    const plan = async (log: RecordLog, records: readonly LogRecord[]) => {
      const planned = await planRestore(log, { format }, sourceOf(await backupOf(format, records)));
      return planned.ok ? (planned.plan.newest?.wallMs ?? null) : undefined;
    };
    const [own, other] = [tablet('own', 90, 2, 95), tablet('other', 10, 3, 60)];
    const log = new InMemoryRecordLog('own');
    expect(await plan(log, [...other, ...own])).toBe(MORNING_MS + 60 * MINUTE_MS);
    expect(await plan(log, own)).toBeNull();
    await log.append(other);
    expect(await plan(log, [...other, ...own])).toBeNull();
  });
});

describe('restoreBackup', () => {
  it('fills a wiped log with all that was there, byte by byte, and twice is once: 1,000 random shops', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryShop, async (shop) => {
        const log = new InMemoryRecordLog('own');
        const file = await backupOf(format, shop);
        const bench = { log, busy: false };
        expect(await restoreBackup(bench, { format }, sourceOf(file))).toMatchObject({
          ok: true,
          plan: { added: shop.length, alreadyThere: 0 },
        });
        const again = await restoreBackup(bench, { format }, sourceOf(file));
        expect(again).toMatchObject({ ok: true, plan: { added: 0, alreadyThere: shop.length } });
        expect(Buffer.compare(await backupOf(format, await everythingIn(log)), file)).toBe(0);
      }),
      { numRuns: 1_000 },
    );
  });

  it('gives two tablets the same log, whichever takes the other’s first: 300 pairs', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryShop, fc.infiniteStream(fc.boolean()), async (shop, split) => {
        // Each tablet has all of its own and a part, from the start, of each other tablet's.
        const upTo = new Map(
          ['tablet-1', 'tablet-7k', 'Tab_2'].map((device) => [device, split.next().value]),
        );
        const first = shop.filter(({ device, sequence }) => upTo.get(device) || sequence <= 4);
        const second = shop.filter(({ device, sequence }) => !upTo.get(device) || sequence <= 7);
        const [one, two] = [new InMemoryRecordLog('one'), new InMemoryRecordLog('two')];
        await one.append(first);
        await two.append(second);
        expect(await restore(one, second)).toMatchObject({ ok: true });
        expect(await restore(two, first)).toMatchObject({ ok: true });
        expect(await linesOf(one)).toEqual(shop.map(recordLine));
        expect(await linesOf(two)).toEqual(shop.map(recordLine));
      }),
      { numRuns: 300 },
    );
  });

  it('writes nothing where one key has another record, and says which', async () => {
    const log = new InMemoryRecordLog('own');
    const records = tablet('a', 0, 20, 30);
    const other = { ...records[7]!, chain: 99 };
    await log.append([other]);
    const outcome = await restore(log, records);
    expect(outcome).toMatchObject({
      ok: false,
      reason: 'clash',
      plan: { clashCount: 1, clashes: [{ device: 'a', sequence: 8 }], added: 21 },
    });
    expect(await everythingIn(log)).toEqual([other]);
  });

  it('waits while something is timed', async () => {
    const log = new InMemoryRecordLog('own');
    const source = sourceOf(await backupOf(format, tablet('a', 0, 3, 5)));
    expect(await restoreBackup({ log, busy: true }, { format }, source)).toEqual({
      ok: false,
      reason: 'busy',
    });
    expect(await log.count()).toBe(0);
  });

  it('leaves the log as it was when the log refuses, and restoring again completes it', async () => {
    const records = tablet('a', 0, 4_998, 30);
    let refuses = true;
    // One record late in the file is too much for it: those before it must not have been written either.
    const isTooMuch = ({ device, sequence }: LogRecord) => device === 'a' && sequence === 4_000;
    const log = new RefusingLog((_, some) => refuses && some.some(isTooMuch));
    await log.append(tablet('b', 0, 1, 2));
    expect(await restore(log, records)).toEqual({
      ok: false,
      reason: 'cut-short',
      written: 0,
      of: 5_000,
      problem: 'QuotaExceededError: no room',
      cameIn: new Map(),
    });
    expect(await log.count()).toBe(3);
    refuses = false;
    expect(await restore(log, records)).toMatchObject({ ok: true, plan: { added: 5_000 } });
    expect((await linesOf(log)).slice(0, 5_000)).toEqual(records.map(recordLine));
  });

  it('says how far a large restore came, and goes on from there', async () => {
    const records = tablet('a', 0, ALL_AT_ONCE, 30);
    // Parts of 1,000; the fourth is refused, also when it is tried a second time.
    const log = new RefusingLog((write) => write === 4 || write === 5);
    expect(await restore(log, records)).toMatchObject({
      reason: 'cut-short',
      written: 3_000,
      of: ALL_AT_ONCE + 2,
    });
    expect(await linesOf(log)).toEqual(records.slice(0, 3_000).map(recordLine));
    expect(await restore(log, records)).toMatchObject({
      ok: true,
      plan: { added: ALL_AT_ONCE + 2 - 3_000, alreadyThere: 3_000 },
    });
    expect(await linesOf(log)).toEqual(records.map(recordLine));
  });

  it('tries a refused write once more, so that the second shelf gets what the first has', async () => {
    const records = tablet('a', 0, 20, 30);
    const log = new RefusingLog((write) => write === 1);
    expect(await restore(log, records)).toMatchObject({ ok: true });
    expect(await log.count()).toBe(22);
  });

  it('hands the log nothing but what it lacks', async () => {
    const records = tablet('a', 0, 50, 30);
    const log = new InMemoryRecordLog('own');
    await log.append([...records.slice(0, 10), ...records.slice(20, 30)]);
    const appended: number[] = [];
    const append = log.append.bind(log);
    log.append = async (some) => {
      appended.push(...some.map(({ sequence }) => sequence));
      await append(some);
    };
    await restore(log, records);
    const lacking = records.map(({ sequence }) => sequence).filter((it) => it > 30 || (it > 10 && it <= 20));
    expect(appended).toEqual(lacking);
  });

  it('says so when the log cannot be read, and writes nothing', async () => {
    const log = new InMemoryRecordLog('own');
    log.readAll = async function* () {
      yield [];
      throw new DOMException('closed', 'InvalidStateError');
    };
    expect(await restore(log, tablet('a', 0, 3, 5))).toEqual({
      ok: false,
      reason: 'log-unreadable',
      problem: 'InvalidStateError: closed',
    });
    expect(await log.count()).toBe(0);
  });

  it('puts every record on both shelves', async () => {
    globalThis.indexedDB = new IDBFactory();
    const file = new ArrayFile();
    const database = await IndexedDbRecordLog.open('shop', () => 'own');
    const { log } = await TwoShelfRecordLog.open(database, journalOn(file));
    const records = [...tablet('a', 0, 1_500, 30), ...tablet('b', 40, 1_500, 70)];
    expect(await restore(log, records)).toMatchObject({ ok: true, plan: { added: 3_004 }, overlaps: [] });
    expect(await linesOf(database)).toEqual(records.map(recordLine));
    const { records: kept, damaged } = await contentOf(journalOn(file));
    expect(kept.map(recordLine)).toEqual(records.map(recordLine));
    expect(damaged).toBe(0);
  });

  it('lists one person at two tablets at once, of all that is in the log then', async () => {
    const log = new InMemoryRecordLog('own');
    await log.append(tablet('a', 0, 10, 60));
    const outcome = await restore(log, tablet('b', 45, 10, 90));
    // From minute 45 to minute 60.
    expect(outcome).toMatchObject({
      ok: true,
      overlaps: [
        {
          person: 'K7',
          first: { id: 'a:1', fromWallMs: MORNING_MS },
          second: { id: 'b:1', toWallMs: MORNING_MS + 90 * MINUTE_MS },
          overlapMs: 15 * MINUTE_MS,
        },
      ],
    });
  });
});
