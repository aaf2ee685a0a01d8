import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { endStudy } from '../../../src/application/study/end-study';
import { importStudies } from '../../../src/application/study/import-studies';
import { listStudies } from '../../../src/application/study/list-studies';
import { startStudy } from '../../../src/application/study/start-study';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { element, heading, openStudy, settled, studyOf, tapAfter } from './study-at-the-bench';

const freshBench = () => Bench.open(new InMemoryRecordLog('t'), new FakeClock());

describe('starting a study', () => {
  it('does not begin before the person was told', async () => {
    const bench = await freshBench();
    expect(() => startStudy(bench, heading({ personTold: false }))).toThrow(
      'startStudy requires that the person was told',
    );
    expect(bench.study.value).toBeNull();
  });

  it('needs an element that comes in every cycle', async () => {
    const bench = await freshBench();
    for (const elements of [[], [element('Blade', { elementClass: 'occasional' })]]) {
      expect(() => startStudy(bench, heading({ elements }))).toThrow(
        'startStudy requires a method with at least one repetitive element',
      );
    }
  });

  it('needs allowances below the whole', async () => {
    const bench = await freshBench();
    const terms = { allowancePct: 100, basis: 'shift', machineAllowancePct: 0 } as const;
    expect(() => startStudy(bench, heading({ terms }))).toThrow(
      'startStudy requires allowances from 0 to below 100 %',
    );
  });

  it('does not leave another study open behind it', async () => {
    const { bench, clock } = await openStudy();
    expect(() => startStudy(bench, heading())).toThrow('startStudy requires that no other study is open');
    endStudy(bench, clock.now());
    expect(startStudy(bench, heading({ title: 'second' }))).toBe(studyOf(bench).id);
    expect(studyOf(bench)).toMatchObject({ title: 'second', status: 'open' });
  });

  it('lists studies newest first, those that came from a table marked', async () => {
    const at = await openStudy({ title: 'first' });
    tapAfter(at, 2_000);
    endStudy(at.bench, at.clock.now());
    const rows = studyOf(at.bench).readings.map(({ row }) => ({ ...row, study: 'from a table' }));
    at.clock.pass(60_000);
    startStudy(at.bench, heading({ title: 'second' }));
    at.clock.pass(60_000);
    importStudies(at.bench, 'study.csv', rows);
    await settled();
    const list = await listStudies(at.bench);
    expect(list.map(({ title, partCode, source }) => [title, partCode, source])).toEqual([
      ['from a table', 'M', 'table'],
      ['second', 'M', 'timed'],
      ['first', 'M', 'timed'],
    ]);
  });
});
