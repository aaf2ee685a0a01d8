import { describe, expect, it } from 'vitest';
import { demoRecords } from '../../../src/demo/demo-records';
import { cellCycle } from '../../../src/domain/cell/cell-cycle';
import { readCellWork } from '../../../src/domain/cell/cell-work';
import { foldStudy } from '../../../src/domain/study/fold-study';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { MINUTE_MS } from './demo-cell';

const records = demoRecords();
const start = records.find(({ fact }) => fact.kind === 'study-started')!;
const study = foldStudy(records.filter(({ stream }) => stream === start.stream));
const rows = study.readings.map(({ row }) => row);

function workOf(own: readonly StudyRow[]) {
  const read = readCellWork(own);
  if (!read.ok) throw new Error(`missing: ${read.missing}`);
  return read.work;
}

describe('the cell’s work from the formal study', () => {
  const work = workOf(rows);
  const summary = summariseStudy(rows);

  it('has the means of the summary sheet, so that the two screens cannot disagree', () => {
    const ours = cellCycle(work);
    expect(ours.externalMs).toBeCloseTo(summary.externalMs, 6);
    expect(ours.internalMs).toBeCloseTo(summary.internalMs, 6);
    expect(ours.machineMs).toBeCloseTo(summary.machineMs, 6);
    // demo/README 6.7: external 0.2789, internal 0.9418.
    expect((ours.externalMs / MINUTE_MS).toFixed(4)).toBe('0.2789');
    expect((ours.internalMs / MINUTE_MS).toFixed(4)).toBe('0.9418');
  });

  it('has a time of every element in every cycle, and 28 cycles of 30 in which all were read', () => {
    for (const { timesMs } of work.elements) expect(timesMs).toHaveLength(30);
    expect(work.complete).toHaveLength(28);
  });

  it('holds occasional work apart, with how often it comes', () => {
    expect(work.occasionals.map(({ name, everyParts }) => [name.slice(0, 2), everyParts])).toEqual([
      ['O1', 20],
      ['O2', 8],
      ['O3', 40],
    ]);
  });

  it('leaves foreign elements out', () => {
    expect(work.elements.map(({ name }) => name.slice(0, 2))).toEqual([
      'W1',
      'E1',
      'E2',
      'W2',
      'E3',
      'E4',
      'E5',
      'E6',
      'MC',
    ]);
  });
});

describe('half a study', () => {
  it('is not a cell: the element without a reading is named', () => {
    const without = rows.map((row) =>
      row.element.startsWith('E2') ? { ...row, excluded: 'method-not-followed' } : row,
    );
    expect(readCellWork(without)).toEqual({ ok: false, missing: ['E2 load, clamp, start'] });
  });

  it('whose cycle is shorter than a second is none either: nothing is missing, and nothing can be simulated', () => {
    const atOnce = rows.map((row) => ({ ...row, observedMs: row.observedMs === null ? null : 1 }));
    expect(readCellWork(atOnce)).toEqual({ ok: false, missing: [] });
  });

  it('of nothing names nothing', () => {
    expect(readCellWork([])).toEqual({ ok: false, missing: [] });
  });
});

it('a cycle of two parts is halved', () => {
  const pairs = rows.map((row) => ({ ...row, partsPerCycle: 2 }));
  expect(cellCycle(workOf(pairs)).cycleMs).toBeCloseTo(cellCycle(workOf(rows)).cycleMs / 2, 6);
});
