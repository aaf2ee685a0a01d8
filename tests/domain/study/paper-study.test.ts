import { describe, expect, it } from 'vitest';
import { noAllowances } from '../../../src/domain/study/allowance-terms';
import { type PaperCell, type PaperStudy, paperGaps, paperRows } from '../../../src/domain/study/paper-study';
import { cycleTimes } from '../../../src/domain/study/study-progress';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { element } from './study-at-the-bench';

const study = (elements: readonly string[], reads: PaperStudy['reads']): PaperStudy => ({
  title: 'Paper',
  elements: elements.map((name) => element(name)),
  partsPerCycle: 1,
  terms: noAllowances,
  reads,
  carried: { operator: 'K7' },
});
/** Cycles of times in minutes, an element after the other; null was not seen. */
const cells = (...cycles: (number | null)[][]): PaperCell[] =>
  cycles.flatMap((times, cycle) =>
    times.map((minutes, elementIndex) => ({
      cycle: cycle + 1,
      elementIndex,
      ms: minutes === null ? null : Math.round(minutes * 60_000),
      ratingPct: 100,
      cause: '',
    })),
  );

describe('a paper study', () => {
  it('of a watch from zero each cycle gives Atkinson’s means of seven elements in three cycles', () => {
    // H. Atkinson, A Rational Wages System, 1917: means 3.32 2.86 1.02 1.11 2.57 1.94 0.36, total 13.18.
    const names = ['1', '2', '3', '4', '5', '6', '7'];
    const { rows, faults } = paperRows(
      study(names, 'cycle'),
      cells(
        [3.4, 6.1, 7.2, 8.2, 10.5, 12.3, 12.7],
        [3.2, 6.2, 7.1, 8.3, 11.1, 13.2, 13.55],
        [3.36, 6.24, 7.3, 8.42, 11.03, 12.96, 13.3],
      ),
    );
    expect(faults).toEqual([]);
    const means = summariseStudy(rows).elements.map(({ observedMeanMs }) => observedMeanMs! / 60_000);
    for (const [place, printed] of [3.32, 2.86, 1.02, 1.11, 2.57, 1.94, 0.36].entries()) {
      expect(Math.abs(means[place]! - printed)).toBeLessThan(0.0051);
    }
    expect(means.reduce((sum, mean) => sum + mean, 0)).toBeCloseTo(13.18, 2);
  });

  it('of a running watch gives Krajewski’s differences: 22 51 72 98 128 150 are 22 29 21 26 30 22 s, mean 25', () => {
    // Krajewski, Ritzman & Malhotra, Operations Management, supplement H, test bank question 27.
    const { rows } = paperRows(
      study(['cycle'], 'watch'),
      cells(...[22, 51, 72, 98, 128, 150].map((seconds) => [seconds / 60])),
    );
    expect(rows.map(({ observedMs }) => observedMs)).toEqual([22, 29, 21, 26, 30, 22].map((s) => s * 1_000));
    expect(summariseStudy(rows).elements[0]!.observedMeanMs).toBe(25_000);
  });

  it('leaves both elements of a break point out that was not seen, and keeps the watch', () => {
    const { rows } = paperRows(study(['A', 'B', 'C'], 'watch'), cells([0.2, null, 0.75]));
    expect(rows.map(({ observedMs, excluded }) => [observedMs, excluded])).toEqual([
      [12_000, null],
      [null, 'missed-break-point'],
      [33_000, 'missed-break-point'],
    ]);
  });

  it('takes own times as they are, with the cause of those left out', () => {
    const own = cells([0.2, 0.5]).map((cell, place) => (place === 1 ? { ...cell, cause: ' talk ' } : cell));
    const { rows } = paperRows(study(['A', 'B'], 'own'), own);
    expect(rows.map(({ observedMs, excluded, carried }) => [observedMs, excluded, carried.operator])).toEqual(
      [
        [12_000, null, 'K7'],
        [30_000, 'talk', 'K7'],
      ],
    );
  });

  it('of half a cycle has no whole cycle and no standard time, whichever way the watch was read', () => {
    const names = ['Load', 'Bore', 'Deburr', 'Inspect'];
    for (const reads of ['own', 'watch', 'cycle'] as const) {
      const half = cells([0.2, 0.5]);
      expect(paperGaps(study(names, reads).elements, half).map(({ elementIndex }) => elementIndex)).toEqual([
        2, 3,
      ]);
      const { rows, faults } = paperRows(study(names, reads), half);
      expect(faults).toEqual([]);
      expect(rows.map(({ element: name, observedMs }) => [name, observedMs !== null])).toEqual([
        ['Load', true],
        ['Bore', true],
        ['Deburr', false],
        ['Inspect', false],
      ]);
      expect(cycleTimes(rows)).toEqual([]);
      expect(summariseStudy(rows).standardTimeMs).toBeNull();
    }
  });

  it('from zero each cycle puts what a cycle lacked at its end on nothing of the next one', () => {
    const { rows } = paperRows(study(['A', 'B'], 'cycle'), cells([0.2], [0.3, 0.7]));
    expect(rows.map(({ cycle, observedMs, excluded }) => [cycle, observedMs, excluded])).toEqual([
      [1, 12_000, null],
      [1, null, 'missed-break-point'],
      [2, 18_000, null],
      [2, 24_000, null],
    ]);
  });

  it('names the rows whose rating was filled in, in the order of the sheet', () => {
    const own = cells([0.2, 0.5], [0.3]).map((cell, place) => ({ ...cell, isFilledIn: place > 0 }));
    // The fourth row is a break point not seen.
    expect(paperRows(study(['A', 'B'], 'own'), own).filledIn).toEqual([2, 3]);
  });

  it('is refused where a rating is nothing that a pace can be', () => {
    for (const ratingPct of [0, 201, 500, Number.NaN]) {
      const { faults } = paperRows(study(['A'], 'own'), [{ ...cells([1])[0]!, ratingPct }]);
      expect(faults).toEqual([{ why: 'no-rating', cycle: 1, element: 'A' }]);
    }
  });

  it('is refused where the watch goes back, where a machine is rated, and where nothing was typed', () => {
    const back = paperRows(study(['A', 'B'], 'watch'), cells([0.5, 0.4]));
    expect(back.faults).toEqual([
      { why: 'watch-backwards', cycle: 1, element: 'B', ms: 24_000, beforeMs: 30_000 },
    ]);
    const machine = { ...study([], 'own'), elements: [element('Bore', { work: 'machine' })] };
    const rated = paperRows(machine, [{ ...cells([1])[0]!, ratingPct: 110 }]);
    expect(rated.faults).toEqual([{ why: 'machine-rated', cycle: 1, element: 'Bore' }]);
    expect(paperRows(study(['A'], 'own'), []).faults).toEqual([{ why: 'nothing' }]);
  });
});
