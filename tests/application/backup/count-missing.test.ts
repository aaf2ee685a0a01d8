import { describe, expect, it } from 'vitest';
import { countMissing, settleMissing, settleRestored } from '../../../src/application/backup/count-missing';
import { restoreBackup } from '../../../src/application/backup/restore-backup';
import type { RecordLog } from '../../../src/application/ports/record-log';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { backupOf, sourceOf } from '../../support/backup-files';
import { fakeTools } from '../../support/backup-tools';
import { recordAt } from '../../support/records';

const of = (device: string, from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, place) =>
    recordAt(from + place, 0, 'shop', { kind: 'person-added', code: `P${from + place}` }, { device }),
  );

async function logOf(...records: ReturnType<typeof of>) {
  const log = new InMemoryRecordLog('t');
  await log.append(records);
  return log;
}

/** Ten records of this tablet and ten of another were seen; then this one has lost six of its own. */
async function lost() {
  const { tools } = fakeTools();
  const look = async (log: RecordLog) => countMissing(await log.countByDevice(), tools);
  expect(await look(await logOf(...of('t', 1, 10), ...of('b', 1, 10)))).toBe(0);
  const log = await logOf(...of('t', 1, 4), ...of('b', 1, 10));
  expect(await look(log)).toBe(6);
  const restore = async (records: ReturnType<typeof of>) => {
    const source = sourceOf(await backupOf(tools.format, records));
    const outcome = await restoreBackup({ log, busy: false }, tools, source);
    if ('cameIn' in outcome) settleRestored(outcome.cameIn, tools);
    return outcome.ok;
  };
  return { tools, log, restore, look };
}

describe('what is missing', () => {
  it('stays missing when a restore brings nothing but another tablet’s records, known here or not', async () => {
    const { log, restore, look } = await lost();
    expect(await restore(of('c', 1, 50))).toBe(true);
    expect(await restore(of('b', 1, 30))).toBe(true);
    expect(await look(log)).toBe(6);
  });

  it('is less by what came back of a tablet that had lost some, and settled once all of it has', async () => {
    const { log, restore, look } = await lost();
    await restore(of('t', 1, 7));
    expect(await look(log)).toBe(3);
    await restore(of('t', 1, 7));
    expect(await look(log)).toBe(3);
    await restore([...of('c', 1, 5), ...of('t', 1, 10)]);
    expect(await look(log)).toBe(0);
  });

  it('counts what a restore brought before it was cut short', async () => {
    const { log, restore, look } = await lost();
    const append = log.append.bind(log);
    let parts = 0;
    log.append = async (records) => {
      parts += 1;
      if (parts > 1) throw new DOMException('no room', 'QuotaExceededError');
      await append(records);
    };
    // Above ten thousand it goes in parts of a thousand, by device: those of this tablet are in the first but one.
    const records = [...of('c', 1, 999), ...of('t', 1, 10), ...of('x', 1, 9_999)];
    expect(await restore(records)).toBe(false);
    expect(await look(log)).toBe(5);
    log.append = append;
    expect(await restore(records)).toBe(true);
    expect(await look(log)).toBe(0);
  });

  it('is noticed also when as many of another tablet’s came in at the same time', async () => {
    const { look } = await lost();
    expect(await look(await logOf(...of('t', 1, 4), ...of('b', 1, 8), ...of('c', 1, 50)))).toBe(8);
  });

  it('goes on from a total that an older release left, whichever tablet’s records come back', async () => {
    const { tools, lastSeen } = fakeTools();
    const log = await logOf(...of('t', 1, 4));
    lastSeen.set(new Map([['', { records: 9, missing: 2 }]]));
    expect(countMissing(await log.countByDevice(), tools)).toBe(7);
    expect(countMissing(await log.countByDevice(), tools)).toBe(7);
    settleRestored(new Map([['c', 5]]), tools);
    expect(countMissing(await log.countByDevice(), tools)).toBe(2);
    settleMissing(tools);
    expect(countMissing(await log.countByDevice(), tools)).toBe(0);
    expect(lastSeen.seen).toEqual(new Map([['t', { records: 4, missing: 0 }]]));
  });
});
