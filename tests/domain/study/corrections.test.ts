import { describe, expect, it } from 'vitest';
import { excludeReading } from '../../../src/application/study/exclude-reading';
import { importStudies } from '../../../src/application/study/import-studies';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { rateReading } from '../../../src/application/study/rate-reading';
import { readStudy } from '../../../src/application/study/read-study';
import { restoreReading } from '../../../src/application/study/restore-reading';
import { setAllowances } from '../../../src/application/study/set-allowances';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { everything, lines, openStudy, settled, studyOf, tapAfter } from './study-at-the-bench';

/** Two whole cycles of Load, Run, Clean; Load takes 2 s and 4 s. */
async function twoCycles() {
  const at = await openStudy();
  for (const ms of [2_000, 5_000, 3_000, 4_000, 5_000, 3_000]) tapAfter(at, ms);
  const id = (place: number) => studyOf(at.bench).readings[place]!.id;
  return { ...at, id };
}

describe('a reading left out', () => {
  it('stays on the sheet with its cause, and leaves the mean', async () => {
    const { bench, id } = await twoCycles();
    excludeReading(bench, studyOf(bench), id(3), 'machine-fault');
    expect(lines(studyOf(bench))[3]).toBe('Load 2: 4000 (machine-fault)');
    const [load] = summariseStudy(studyOf(bench).readings.map(({ row }) => row)).elements;
    // Mean of 2 s alone; of all: (2 + 4) ÷ 2.
    expect(load).toMatchObject({ n: 1, excluded: 1, observedMeanMs: 2_000, meanOfAllMs: 3_000 });
  });

  it('is never left out without a cause', async () => {
    const { bench, id } = await twoCycles();
    for (const cause of ['', '   ']) {
      expect(() => excludeReading(bench, studyOf(bench), id(0), cause)).toThrow(
        'excludeReading requires a cause',
      );
    }
  });

  it('keeps the engineer’s own words as its cause', async () => {
    const { bench, id } = await twoCycles();
    excludeReading(bench, studyOf(bench), id(0), '  dropped the cloth ');
    expect(studyOf(bench).readings[0]!.row.excluded).toBe('dropped the cloth');
  });

  it('is taken back in, and the log holds the tap, the exclusion and the return', async () => {
    const { bench, log, id } = await twoCycles();
    excludeReading(bench, studyOf(bench), id(0), 'interruption');
    restoreReading(bench, studyOf(bench), id(0));
    expect(studyOf(bench).readings[0]!.row.excluded).toBeNull();
    const about = (await everything(log)).map(({ fact }) => fact);
    expect(about[1]).toEqual({ kind: 'element-ended', ratingPct: 100 });
    expect(about.slice(-2)).toEqual([
      { kind: 'reading-excluded', reading: id(0), cause: 'interruption' },
      { kind: 'reading-restored', reading: id(0) },
    ]);
  });

  it('is not taken back in when it is the time of two elements, or no time at all', async () => {
    const at = await openStudy();
    missBreakPoint(at.bench);
    tapAfter(at, 7_000);
    for (const { id } of studyOf(at.bench).readings) {
      expect(() => restoreReading(at.bench, studyOf(at.bench), id)).toThrow(
        'restoreReading requires the time of one element, not a missed break point',
      );
    }
  });

  it('has to be a reading of that study', async () => {
    const { bench } = await twoCycles();
    expect(() => excludeReading(bench, studyOf(bench), 't:999', 'interruption')).toThrow(
      'excludeReading requires a reading of the study',
    );
  });
});

describe('a rating corrected', () => {
  it('counts from then on, and the first one stays in the log', async () => {
    const { bench, log, id } = await twoCycles();
    rateReading(bench, studyOf(bench), id(0), 110);
    expect(studyOf(bench).readings[0]!.row.ratingPct).toBe(110);
    const facts = (await everything(log)).map(({ fact }) => fact);
    expect(facts[1]).toEqual({ kind: 'element-ended', ratingPct: 100 });
    expect(facts.at(-1)).toEqual({ kind: 'reading-rated', reading: id(0), ratingPct: 110 });
  });

  it('is refused on machine work', async () => {
    const { bench, id } = await twoCycles();
    expect(() => rateReading(bench, studyOf(bench), id(1), 110)).toThrow(
      'rateReading requires work that a person governs: a machine is always at 100',
    );
    expect(studyOf(bench).readings[1]!.row.ratingPct).toBe(100);
  });

  it('is refused when it judges no pace', async () => {
    const { bench, id } = await twoCycles();
    expect(() => rateReading(bench, studyOf(bench), id(0), 0)).toThrow(
      'rateReading requires a rating above 0 and of at most 200',
    );
  });
});

describe('allowances set afterwards', () => {
  it('stand on every row and in the standard time', async () => {
    const { bench } = await twoCycles();
    setAllowances(bench, studyOf(bench), { allowancePct: 20, basis: 'shift', machineAllowancePct: 0 });
    expect(
      new Set(studyOf(bench).readings.map(({ row }) => `${row.allowancePct} ${row.allowanceBasis}`)),
    ).toEqual(new Set(['20 shift']));
    // Load 3 s external; beside it the longer of Clean 3 s and Run 5 s: (3 ÷ 0.8) + max(3 ÷ 0.8, 5) = 8.75 s.
    const { standardTimeMs, governing } = summariseStudy(studyOf(bench).readings.map(({ row }) => row));
    expect(standardTimeMs).toBeCloseTo(8_750, 9);
    expect(governing).toBe('machine');
  });

  it('lie from 0 to below 100 per cent', async () => {
    const { bench } = await twoCycles();
    for (const allowancePct of [-1, 100, Number.NaN]) {
      expect(() =>
        setAllowances(bench, studyOf(bench), { allowancePct, basis: 'shift', machineAllowancePct: 0 }),
      ).toThrow('setAllowances requires allowances from 0 to below 100 %');
    }
  });
});

describe('a study that came from a table', () => {
  it('takes the same corrections as one that was timed', async () => {
    const { bench, id } = await twoCycles();
    const rows = studyOf(bench).readings.map(({ row }) => row);
    expect(id(0)).toBe('t:2');
    const [imported] = importStudies(bench, 'study.csv', rows);
    await settled();
    const before = (await readStudy(bench, imported!))!;
    excludeReading(bench, before, before.readings[3]!.id, 'interruption');
    rateReading(bench, before, before.readings[0]!.id, 90);
    await settled();
    const after = (await readStudy(bench, imported!))!;
    expect(after).toMatchObject({ status: 'imported', heading: null });
    expect(lines(after)[3]).toBe('Load 2: 4000 (interruption)');
    expect(after.readings[0]!.row.ratingPct).toBe(90);
  });
});
