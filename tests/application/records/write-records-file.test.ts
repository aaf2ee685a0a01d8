import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { describeLog } from '../../../src/application/records/describe-log';
import { writeRecordsFile } from '../../../src/application/records/write-records-file';
import { definePart } from '../../../src/application/shop/define-part';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

async function benchWithATurn(log: InMemoryRecordLog = new InMemoryRecordLog('t')) {
  const clock = new FakeClock();
  const bench = await Bench.open(log, clock);
  const part = definePart(bench, 'M', 'Door "medium", ½');
  startTurn(bench, 'K7', { part, partCode: 'M', targetMs: null });
  clock.pass(80_000);
  markPartDone(bench, clock.now());
  await settled();
  return { bench, log };
}

async function recordsOf(log: InMemoryRecordLog): Promise<LogRecord[]> {
  const all: LogRecord[] = [];
  for await (const batch of log.readAll()) all.push(...batch);
  return all;
}

describe('writeRecordsFile', () => {
  it('holds every record of the log, unchanged, under its format, version and counts', async () => {
    const { bench, log } = await benchWithATurn();
    const { text, records, leftOut } = await writeRecordsFile(bench);
    const file = JSON.parse(text);
    expect(file).toMatchObject({
      format: 'pacewright-records',
      version: 1,
      device: 't',
      // The clock began on 2 March 2026, 06:00 UTC, and ran 80 s.
      savedAt: '2026-03-02T06:01:20.000Z',
      counts: { records: 3, turns: 1, studies: 0, leftOut: 0 },
    });
    expect(file.note).toContain('not for pay or discipline');
    expect(file.records).toEqual(await recordsOf(log));
    expect({ records, leftOut }).toEqual({ records: 3, leftOut: 0 });
  });

  it('is a whole file for an empty log', async () => {
    const bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
    expect(JSON.parse((await writeRecordsFile(bench)).text)).toMatchObject({
      counts: { records: 0, turns: 0 },
      records: [],
    });
  });

  it('says how many records are not in it because the log has refused them', async () => {
    class FullLog extends InMemoryRecordLog {
      override async append(): Promise<void> {
        throw new Error('full');
      }
    }
    const { bench } = await benchWithATurn(new FullLog('t'));
    const { text, leftOut } = await writeRecordsFile(bench);
    expect(leftOut).toBe(3);
    expect(JSON.parse(text).counts).toMatchObject({ records: 0, leftOut: 3 });
  });
});

describe('describeLog', () => {
  it('counts records, turns and studies, and names the first and the last day', async () => {
    const { bench } = await benchWithATurn();
    expect(await describeLog(bench)).toEqual({
      device: 't',
      records: 3,
      turns: 1,
      studies: 0,
      days: { first: '2026-03-02', last: '2026-03-02' },
    });
  });

  it('has no days before the first turn', async () => {
    const bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
    expect(await describeLog(bench)).toMatchObject({ records: 0, days: null });
  });
});
