import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { readCellStudies } from '../../../src/application/cell/read-cell-studies';
import { definePart } from '../../../src/application/shop/define-part';
import { retirePart } from '../../../src/application/shop/retire-part';
import { importStudies } from '../../../src/application/study/import-studies';
import { startStudy } from '../../../src/application/study/start-study';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { heading } from '../../domain/study/study-at-the-bench';
import { FakeClock } from '../../support/fake-clock';

let clock: FakeClock;
let bench: Bench;

function row(study: string, part: string, change: Partial<StudyRow> = {}): StudyRow {
  return {
    study,
    cycle: 1,
    element: 'load',
    elementNo: 1,
    elementClass: 'repetitive',
    work: 'manual',
    placement: 'external',
    unitsPerOccurrence: 1,
    partsPerCycle: 1,
    observedMs: 30_000,
    ratingPct: 100,
    excluded: null,
    allowancePct: 0,
    allowanceBasis: 'normal_time',
    machineAllowancePct: 0,
    carried: { part },
    ...change,
  };
}

const cycles = (study: string, part: string, count: number) =>
  Array.from({ length: count }, (_, place) => row(study, part, { cycle: place + 1 }));

async function take(...rows: StudyRow[]): Promise<void> {
  importStudies(bench, 'table.csv', rows);
  clock.pass(60_000);
  await new Promise((resolve) => setTimeout(resolve, 5));
}

const found = async () => {
  const { studies, partial } = await readCellStudies(bench);
  return { titles: studies.map(({ title }) => title), partial };
};

beforeEach(async () => {
  clock = new FakeClock();
  bench = await Bench.open(new InMemoryRecordLog('tablet-1'), clock);
});

describe('the studies that the cell is reckoned from', () => {
  it('are the newest whole one of each part, in the order of the shop’s parts', async () => {
    definePart(bench, 'V', '');
    definePart(bench, 'M', '');
    await take(...cycles('M old', 'M', 5));
    await take(...cycles('V', 'V', 5), ...cycles('M new', 'M', 5));
    expect(await found()).toEqual({ titles: ['V', 'M new'], partial: [] });
  });

  it('leave out one that tells half of its method, name what is missing, and take the one before', async () => {
    await take(row('whole', 'M'));
    await take(
      row('half', 'M'),
      row('half', 'M', { element: 'inspect', elementNo: 2, excluded: 'method-not-followed' }),
    );
    expect(await found()).toEqual({ titles: ['whole'], partial: [{ title: 'half', missing: ['inspect'] }] });
  });

  it('are an older one with five whole cycles where the newest has four, and that is said', async () => {
    await take(...cycles('five', 'M', 5));
    await take(...cycles('four', 'M', 4));
    expect(await found()).toEqual({ titles: ['five'], partial: [{ title: 'four', missing: [], cycles: 4 }] });
    expect((await readCellStudies(bench)).studies).toMatchObject([{ why: 'enough', of: 2 }]);
    // One that is still being timed is none of those it was chosen from.
    startStudy(bench, heading({ partCode: 'M' }), clock.now());
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect((await readCellStudies(bench)).studies).toMatchObject([{ why: 'enough', of: 2 }]);
  });

  it('are the one with most whole cycles where none has five, the newer of two alike, and why is said', async () => {
    await take(...cycles('four, older', 'M', 4));
    await take(...cycles('four', 'M', 4));
    await take(...cycles('one, typed from paper', 'M', 1));
    expect(await found()).toEqual({
      titles: ['four'],
      partial: [{ title: 'one, typed from paper', missing: [], cycles: 1 }],
    });
    expect((await readCellStudies(bench)).studies).toMatchObject([{ why: 'most', of: 3 }]);
  });

  it('leave out one that has no row at all of an element of its method', async () => {
    await take(...cycles('whole', 'M', 5));
    const elements = ['load', 'deburr'].map((name) => ({
      name,
      breakPoint: '',
      elementClass: 'repetitive' as const,
      work: 'manual' as const,
      placement: 'external' as const,
      unitsPerOccurrence: 1,
    }));
    importStudies(bench, '', cycles('half of its method', 'M', 5), elements);
    clock.pass(60_000);
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(await found()).toEqual({
      titles: ['whole'],
      partial: [{ title: 'half of its method', missing: ['deburr'] }],
    });
  });

  it('are the newest where none has five, and say of how many, of which day and what is worth a look', async () => {
    await take(...cycles('two', 'M', 2));
    await take(...cycles('four', 'M', 4));
    const { studies } = await readCellStudies(bench);
    expect(studies).toMatchObject([{ title: 'four', of: 2, flagged: 0 }]);
    expect(studies[0]!.startedAt.wallMs).toBeGreaterThan(0);
  });

  it('count what their sheet marks as worth a look, and use it: nobody left it out', async () => {
    const rows = cycles('nine', 'M', 9).map((own, place) => ({
      ...own,
      observedMs: place === 4 ? 90_000 : 30_000 + 500 * place,
    }));
    await take(...rows);
    const { studies } = await readCellStudies(bench);
    expect(studies[0]).toMatchObject({ flagged: 1 });
    expect(studies[0]!.work.elements[0]!.timesMs).toContain(90_000);
  });

  it('leave out a part that the shop has retired', async () => {
    const part = definePart(bench, 'M', '');
    await take(row('M', 'M'), row('of a part nobody listed', 'X'));
    retirePart(bench, part, true);
    expect((await found()).titles).toEqual(['of a part nobody listed']);
  });
});
