import { describe, expect, it } from 'vitest';
import { analyseStudies } from '../../../src/domain/study/analyse-studies';
import { governingBranch } from '../../../src/domain/study/governing-branch';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { type ElementFigure, elementWorking } from '../../../src/screens/study/element-working';
import type { RequiredForm } from '../../../src/screens/study/needed-working';
import { timeWords } from '../../../src/screens/study/time-words';
import { type TotalFigure, totalWorking } from '../../../src/screens/study/total-working';

/** Readings of one element, in minutes, as a table gives them. */
function rows(element: string, minutes: number[], change: Partial<StudyRow> = {}): StudyRow[] {
  return minutes.map((time, index) => ({
    study: 's',
    cycle: index + 1,
    element,
    elementNo: 1,
    elementClass: 'repetitive',
    work: 'manual',
    placement: 'external',
    unitsPerOccurrence: 1,
    partsPerCycle: 1,
    observedMs: Math.round(time * 60_000),
    ratingPct: 100,
    excluded: null,
    allowancePct: 15,
    allowanceBasis: 'shift',
    machineAllowancePct: 0,
    carried: {},
    ...change,
  }));
}

// Heizer & Render, Operations Management, example 10.2: minutes, ratings 120, 105, 110, two readings left
// out as foreign, 15 % of the shift; printed: averages 9.5, 2.2, 1.5, normal times 11.4, 2.31, 1.65, sum
// 15.36, standard time 18.07.
const letters = [
  ...rows('compose', [8, 10, 9, 21, 11], { ratingPct: 120 }),
  ...rows('address', [2, 3, 2, 1, 3], { ratingPct: 105, elementNo: 2 }),
  ...rows('stuff', [2, 1, 5, 2, 1], { ratingPct: 110, elementNo: 3 }),
].map((row) =>
  row.observedMs === 21 * 60_000 || row.observedMs === 5 * 60_000
    ? { ...row, excluded: 'foreign-element' }
    : row,
);

function working(figure: ElementFigure, source: StudyRow[], form: RequiredForm = 't') {
  const summary = summariseStudy(source).elements[0]!;
  const own = source.filter(({ element }) => element === summary.element);
  return elementWorking(figure, { summary, rows: own, time: timeWords.min, form });
}

const total = (figure: TotalFigure, source: StudyRow[]) =>
  totalWorking(figure, summariseStudy(source), timeWords.min).numbers;

describe('the branch that governs', () => {
  it('is named only where work lies inside the run: 0.21 min outside it compare with nothing', () => {
    expect(governingBranch({ governing: 'machine', internalMs: 0 })).toBe('alone');
    expect(governingBranch({ governing: 'machine', internalMs: 1 })).toBe('machine');
    expect(governingBranch({ governing: 'operator', internalMs: 9 })).toBe('operator');
    expect(governingBranch({ governing: null, internalMs: 9 })).toBe('nobody');
  });
});

describe('the working of an element’s figure', () => {
  it('shows the readings that went in, those left out with their cause, and the mean with them', () => {
    const { numbers, leftOut } = working('observed', letters);
    expect(numbers).toEqual([
      '(8.000 + 10.000 + 9.000 + 11.000) ÷ 4 = 9.500 min',
      // (8 + 10 + 9 + 21 + 11) ÷ 5
      'With those left out the mean of all timed readings would be 11.800 min.',
    ]);
    expect(leftOut).toEqual(['cycle 4: 21.000 min, foreign element inside']);
  });

  it('multiplies each reading by its own rating', () => {
    expect(working('normal', letters).numbers).toEqual([
      '(8.000 · 1.20 + 10.000 · 1.20 + 9.000 · 1.20 + 11.000 · 1.20) ÷ 4 = 11.400 min',
    ]);
  });

  it('gives the range and no interval below five readings', () => {
    // The readings used, rated 120: 8, 9, 10, 11 become 9.6 to 13.2.
    const [said] = working('precision', letters).numbers;
    expect(said).toContain('between 9.600 min and 13.200 min');
    expect(said).not.toContain('half-width');
  });

  it('counts the readings needed in the form chosen', () => {
    // Heizer & Render, problem 10.26: 15 readings by z. International Labour Office, Introduction to Work
    // Study: 7 6 7 7 6 need 9 by the short form (8.8154 before rounding up; printed 8.81, from memory).
    const heizer = rows('a', [3.5, 3.2, 4.1, 3.6, 3.9]);
    expect(working('needed', heizer, 'z').numbers.at(-1)).toBe('n = 14.11, so 15');
    expect(working('needed', rows('a', [7, 6, 7, 7, 6]), 'ilo').numbers.at(-1)).toBe('n = 8.82, so 9');
  });
});

describe('the working of the standard time', () => {
  it('divides by what is left of the shift, or multiplies normal time, by the basis', () => {
    expect(total('external', letters)).toEqual(['compose 11.400 + address 2.310 + stuff 1.650 = 15.360 min']);
    expect(total('standard', letters)).toEqual(['15.360 ÷ 0.850 = 18.071 min']);
    const normal = letters.map((row): StudyRow => ({ ...row, allowanceBasis: 'normal_time' }));
    // 15.36 · 1.15
    expect(total('standard', normal)).toEqual(['15.360 · 1.150 = 17.664 min']);
  });

  it('sets the machine’s run beside the internal work, each with its own allowance', () => {
    const basis = { allowanceBasis: 'normal_time', machineAllowancePct: 30 } as const;
    const beside = [
      ...rows('load', [1], basis),
      ...rows('clean', [2], { ...basis, placement: 'internal', elementNo: 2 }),
      ...rows('run', [3], { ...basis, work: 'machine', elementNo: 3 }),
    ];
    // 1 · 1.15 + max(2 · 1.15, 3 · 1.3) = 1.15 + 3.9
    expect(total('standard', beside)).toEqual([
      '(1.000 + 0.000) · 1.150 + max(2.000 · 1.150; 3.000 · 1.300) = 5.050 min',
    ]);
    expect(total('internal', beside)).toEqual(['clean 2.000 = 2.000 min']);
    expect(total('governs', beside)).toEqual(['2.000 · 1.150 against 3.000 · 1.300']);
    expect(total('normal', beside)).toEqual(['1.000 + 0.000 + max(2.000; 3.000) = 4.000 min']);
  });

  it('adds up what readings and rating leave open, and says when more cycles cannot help', () => {
    // Five cycles whose rated times are 99, 100, 101, 100, 100: s = 0.7071, t(0.975, 4) = 2.776, h = 0.878 %.
    const steady = rows('load', [0.99, 1, 1.01, 1, 1]);
    const one = { id: 's', title: 's', operator: 'K7', day: '2026-03-02', rows: steady };
    const terms = { allowancePct: 15, basis: 'shift', machineAllowancePct: 0 } as const;
    const { numbers } = totalWorking(
      'uncertainty',
      summariseStudy(steady),
      timeWords.min,
      analyseStudies([one], terms),
    );
    expect(numbers).toEqual([
      'h is half the interval of the rated cycle at 95 %: ± 0.9 % from 5 whole cycles. It speaks of this person on this day.',
      '√(0.9² + 5.0² + 0.0²) = ± 5.1 %',
      'More cycles will not help: study a second operator.',
    ]);
  });
});
