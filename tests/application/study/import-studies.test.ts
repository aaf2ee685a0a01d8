import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { importStudies } from '../../../src/application/study/import-studies';
import { listStudies } from '../../../src/application/study/list-studies';
import { recordKey } from '../../../src/domain/records/record-key';
import { readReadingsTable } from '../../../src/exchange/read-readings-table';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { everything, settled } from '../../domain/study/study-at-the-bench';
import { FakeClock } from '../../support/fake-clock';

function rowsOf(...studies: string[]) {
  const table = readReadingsTable(
    ['study,cycle,element,observed_s', ...studies.map((study) => `${study},1,Load,3`)].join('\n'),
  );
  if (!table.ok) throw new Error('the table is refused');
  return table.rows;
}

describe('a table of several studies', () => {
  it('is in the log whole or not at all, wherever the page is killed', async () => {
    const log = new InMemoryRecordLog('t');
    const { append } = log;
    let writes = 0;
    log.append = (records) => {
      writes += 1;
      return writes === 1 ? append.call(log, records) : Promise.reject(new Error('killed'));
    };
    const bench = await Bench.open(log, new FakeClock());
    const ids = importStudies(bench, 'table.csv', rowsOf('A', 'B', 'C'));
    await settled();
    expect((await everything(log)).map(recordKey)).toEqual(ids);
    expect(ids).toHaveLength(3);
  });

  it('gives each study a stream of its own, that it begins', async () => {
    const log = new InMemoryRecordLog('t');
    const bench = await Bench.open(log, new FakeClock());
    const ids = importStudies(bench, 'table.csv', rowsOf('A', 'B', 'A'));
    await settled();
    expect((await everything(log)).map(({ stream }) => stream)).toEqual(ids);
    expect(ids).toEqual(['t:1', 't:2']);
    expect(await listStudies(bench)).toHaveLength(2);
  });
});
