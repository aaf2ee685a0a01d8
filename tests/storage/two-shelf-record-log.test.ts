import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import type { Journal } from '../../src/storage/journal-client';
import { TwoShelfRecordLog } from '../../src/storage/two-shelf-record-log';
import { chained, recordAt, stampAt } from '../support/records';
import { ArrayFile, contentOf, journalOn } from './in-memory-journal';
import { recordLogContract } from './record-log-contract';

const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;
const LONGEST = 1_300;
const rows = new Map<string, LogRecord[]>();
/** One of a long row of records of a tablet. */
function record(sequence: number, device = 't'): LogRecord {
  const row =
    rows.get(device) ??
    chained(
      Array.from({ length: LONGEST }, (_, place) =>
        recordAt(place + 1, place * 1_000, `${device}:1`, done, { device }),
      ),
    );
  rows.set(device, row);
  return row[sequence - 1]!;
}
const several = (count: number) => Array.from({ length: count }, (_, place) => record(place + 1));

async function open(database: InMemoryRecordLog, file: ArrayFile) {
  return TwoShelfRecordLog.open(database, journalOn(file));
}

async function everything(log: { readAll(): AsyncIterable<LogRecord[]> }): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  return found;
}

recordLogContract(
  'the log on two shelves',
  async () => (await open(new InMemoryRecordLog('t'), new ArrayFile())).log,
);

describe('the log on two shelves', () => {
  it('has a record on both before it answers', async () => {
    const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
    const { log } = await open(database, file);
    await log.append(several(3));
    expect(await everything(database)).toEqual(several(3));
    expect((await contentOf(journalOn(file))).records).toEqual(several(3));
  });

  it('never lets what the database refused take the place of what it holds', async () => {
    const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
    const { log } = await open(database, file);
    await log.append([record(1)]);
    await expect(log.append([{ ...record(1), chain: 5 }])).rejects.toThrow();
    await open(database, file);
    expect(await everything(database)).toEqual([record(1)]);
    const { log: wiped } = await open(new InMemoryRecordLog('t'), file);
    expect(await everything(wiped)).toEqual([record(1)]);
  });

  it('gives back what both held, though a tab that was asleep wrote another line of its number before the loss', async () => {
    const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
    const { log } = await open(database, file);
    await log.append([record(1), record(2)]);
    const [asleep] = chained(
      [recordAt(2, 9_000, 't:1', done, { stamp: stampAt(9_000, { run: 'asleep' }) })],
      record(1).chain,
    );
    const { log: awake } = await open(database, file);
    await expect(awake.append([asleep!])).rejects.toThrow();
    const wiped = new InMemoryRecordLog('t');
    await open(wiped, file);
    const stamps = (await everything(wiped)).map(({ stamp }) => stamp);
    expect(stamps).toHaveLength(3);
    expect(stamps).toContainEqual(record(2).stamp);
    expect(stamps).toContainEqual(asleep!.stamp);
    await open(wiped, file);
    expect(await everything(wiped)).toHaveLength(3);
  });

  it('does not answer for one shelf alone', async () => {
    const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
    const journal = journalOn(file);
    journal.append = () => Promise.reject(new Error('the file is gone'));
    const { log } = await TwoShelfRecordLog.open(database, journal);
    await expect(log.append([record(1)])).rejects.toThrow('the file is gone');
  });

  it('gives everything back to a database that was wiped', async () => {
    const file = new ArrayFile();
    const { log } = await open(new InMemoryRecordLog('t'), file);
    await log.append(several(1_234));
    await log.append([record(5, 'other')]);
    const wiped = new InMemoryRecordLog('t');
    const { healing } = await open(wiped, file);
    expect(healing).toEqual({ restored: 1_235, copied: 0, damaged: 0 });
    expect(await everything(wiped)).toEqual([record(5, 'other'), ...several(1_234)]);
  });

  it('gives back what the database lost at its end', async () => {
    const file = new ArrayFile();
    const { log } = await open(new InMemoryRecordLog('t'), file);
    await log.append(several(120));
    const shorter = new InMemoryRecordLog('t');
    await shorter.append(several(100));
    const { healing } = await open(shorter, file);
    expect(healing).toEqual({ restored: 20, copied: 0, damaged: 0 });
    expect(await everything(shorter)).toEqual(several(120));
  });

  it('fills a journal that is gone from the database', async () => {
    const database = new InMemoryRecordLog('t');
    const { log } = await open(database, new ArrayFile());
    await log.append(several(700));
    const fresh = new ArrayFile();
    const { healing } = await open(database, fresh);
    expect(healing).toEqual({ restored: 0, copied: 700, damaged: 0 });
    const again = await open(database, fresh);
    expect(again.healing).toEqual({ restored: 0, copied: 0, damaged: 0 });
  });

  it('gives both what each of them alone had, and counts the lines that cannot be read', async () => {
    const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
    const { log } = await open(database, file);
    await log.append(several(1_200));
    file.bytes[40]! ^= 1;
    const wiped = new InMemoryRecordLog('t');
    await wiped.append([record(1)]);
    const { healing } = await open(wiped, file);
    expect(healing).toEqual({ restored: 1_199, copied: 1, damaged: 1 });
    expect(await everything(wiped)).toEqual(several(1_200));
    expect((await open(wiped, file)).healing).toEqual({ restored: 0, copied: 0, damaged: 0 });
  });

  it('levels shelves that a kill left apart from their ends alone, whichever is behind', async () => {
    for (let apart = -4; apart <= 4; apart += 1) {
      const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
      const { log } = await open(database, file);
      await log.append(several(50));
      const more = Array.from({ length: Math.abs(apart) }, (_, place) => record(51 + place));
      if (apart > 0) await journalOn(file).append([...more, ...more], 't');
      else await database.append(more);
      const unread = withoutWhole(journalOn(file));
      const { healing } = await TwoShelfRecordLog.open(database, unread);
      expect(healing).toEqual({ restored: Math.max(0, apart), copied: Math.max(0, -apart), damaged: 0 });
      const all = several(50 + Math.abs(apart));
      expect(await everything(database)).toEqual(all);
      const lines = (await contentOf(journalOn(file))).records.map(({ sequence }) => sequence);
      expect([...new Set(lines)]).toEqual(all.map(({ sequence }) => sequence));
    }
  });

  it('reads the journal whole where a line at its end is damaged', async () => {
    const file = new ArrayFile();
    const { log } = await open(new InMemoryRecordLog('t'), file);
    await log.append(several(20));
    const shorter = new InMemoryRecordLog('t');
    await shorter.append(several(10));
    file.bytes[Math.floor(file.bytes.length * 0.75)]! ^= 1;
    const { healing } = await open(shorter, file);
    expect(healing).toEqual({ restored: 9, copied: 0, damaged: 1 });
  });

  it('puts the records of another tablet into the journal first, so that a copy cut short is made again', async () => {
    const [database, file] = [new InMemoryRecordLog('t'), new ArrayFile()];
    const { log } = await open(database, file);
    const taken: string[] = [];
    const order = <Shelf extends { append(records: LogRecord[], device: string): Promise<void> }>(
      name: string,
      shelf: Shelf,
    ) => {
      const append = shelf.append.bind(shelf);
      shelf.append = async (...args) => {
        await append(...args);
        taken.push(name);
      };
    };
    order('database', database);
    const journal = journalOn(file);
    order('journal', journal as Parameters<typeof order>[1]);
    const { log: watched } = await TwoShelfRecordLog.open(database, journal);
    await watched.append([record(1, 'other')]);
    expect(taken).toEqual(['journal', 'database']);
    expect(log.device).toBe('t');
  });

  it('reads a journal of another name whole, once, and takes its own name from then on', async () => {
    const file = new ArrayFile();
    const { log } = await open(new InMemoryRecordLog('old'), file);
    await log.append([record(1, 'old'), record(2, 'old')]);
    const database = new InMemoryRecordLog('new');
    const first = await open(database, file);
    expect(first.healing.restored).toBe(2);
    await first.log.append([record(1, 'new')]);
    expect((await open(database, file)).healing).toEqual({ restored: 0, copied: 0, damaged: 0 });
  });
});

/** A journal that may not be read whole. */
function withoutWhole(journal: Journal): Journal {
  return {
    get ownEnd() {
      return journal.ownEnd;
    },
    append: (records, device) => journal.append(records, device),
    since: (own) => journal.since(own),
    // biome-ignore lint/correctness/useYield: it is not to be read
    async *readAll() {
      throw new Error('the ends are enough');
    },
    close() {},
  };
}
