import { describe, expect, it } from 'vitest';
import { checkNewestRecords, checkRecords, NEWEST } from '../../../src/application/records/check-records';
import { chainOf } from '../../../src/domain/records/chain';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { recordAt } from '../../support/records';

/** So many records of one tablet, each following from the one before it. */
function chained(count: number, device: string): LogRecord[] {
  let before = 0;
  return Array.from({ length: count }, (_, place) => {
    const code = `K${place}`;
    const record = recordAt(place + 1, place, 'shop', { kind: 'person-added', code }, { device });
    before = chainOf(record, before);
    return { ...record, chain: before };
  });
}

async function logOf(...records: LogRecord[]): Promise<InMemoryRecordLog> {
  const log = new InMemoryRecordLog('t');
  await log.append(records);
  return log;
}

const changed = (record: LogRecord): LogRecord => ({
  ...record,
  fact: { kind: 'person-added', code: 'other' },
});

describe('the check of all records', () => {
  it('finds nothing in a sound log of two tablets, and tells how far it came', async () => {
    const told: number[] = [];
    const check = await checkRecords(await logOf(...chained(30, 't'), ...chained(12, 'u')), (count) =>
      told.push(count),
    );
    expect(check).toEqual({ records: 42, devices: 2, breakCount: 0, breaks: [] });
    expect(told).toEqual([42]);
  });

  it('names the tablet and the number of a record that was changed, and of one that is missing', async () => {
    const [first, second, third, fourth] = chained(4, 't');
    const other = chained(3, 'u');
    const check = await checkRecords(
      await logOf(first!, changed(second!), fourth!, ...other.slice(1)),
      () => {},
    );
    expect(third).toBeDefined();
    expect(check).toEqual({
      records: 5,
      devices: 2,
      breakCount: 3,
      breaks: [
        { device: 't', sequence: 2, why: 'changed' },
        { device: 't', sequence: 3, why: 'missing' },
        { device: 'u', sequence: 1, why: 'missing' },
      ],
    });
  });

  it('names a record that follows from the others and can go into no copy', async () => {
    const log = await logOf(...chained(3, 't'));
    const takes = ({ sequence }: LogRecord) => sequence !== 2;
    const amiss = [{ device: 't', sequence: 2, why: 'unreadable' }];
    expect(await checkRecords(log, () => {}, takes)).toMatchObject({ breakCount: 1, breaks: amiss });
    expect(await checkNewestRecords(log, takes)).toEqual(amiss);
  });

  it('counts every break and lists the first twenty', async () => {
    // Of 60 records every second is left out: 30 stay, the first of them whole, each later one after a gap.
    const holed = chained(60, 't').filter((_, place) => place % 2 === 0);
    const check = await checkRecords(await logOf(...holed), () => {});
    expect(check.breakCount).toBe(29);
    expect(check.breaks).toHaveLength(20);
  });
});

describe('the check at opening', () => {
  it('looks at the newest thousand of this tablet only', async () => {
    const records = chained(NEWEST + 500, 't');
    const old = records.map((record, place) => (place === 400 ? changed(record) : record));
    expect(await checkNewestRecords(await logOf(...old), () => true)).toEqual([]);
    const recent = records.map((record, place) => (place === 600 ? changed(record) : record));
    expect(await checkNewestRecords(await logOf(...recent), () => true)).toEqual([
      { device: 't', sequence: 601, why: 'changed' },
    ]);
  });

  it('is quick: ten thousand records are followed within a second, the machine being busy', async () => {
    const log = await logOf(...chained(10_000, 't'));
    const began = performance.now();
    await checkRecords(log, () => {});
    expect(performance.now() - began).toBeLessThan(1_000);
  });
});
