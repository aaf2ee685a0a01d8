import { describe, expect, it } from 'vitest';
import {
  carriedRating,
  cellsOf,
  emptyCell,
  emptyPaperDraft,
  typedMs,
} from '../../../src/screens/study/paper/paper-draft';
import { paperQuestions } from '../../../src/screens/study/paper/paper-questions';
import { element } from '../../domain/study/study-at-the-bench';

const elements = [
  element('Load'),
  element('Bore', { work: 'machine' }),
  element('Blade', { elementClass: 'occasional', unitsPerOccurrence: 5 }),
];

describe('cells typed from paper', () => {
  it('read a point and a comma alike, in minutes or seconds, and nothing else', () => {
    expect([typedMs('0.45', 'min'), typedMs('0,45', 'min'), typedMs('.5', 's'), typedMs('12', 's')]).toEqual([
      27_000, 27_000, 500, 12_000,
    ]);
    for (const text of ['', '.', '-1', '1.2.3', 'x']) expect(typedMs(text, 'min')).toBeNull();
  });

  it('keep the last rating of the element until another is typed, and never rate the machine', () => {
    const cells = {
      '1:0': { ...emptyCell, time: '0.2', rating: '110' },
      '1:1': { ...emptyCell, time: '0.8' },
      '2:0': { ...emptyCell, time: '0.3' },
    };
    const found = cellsOf({ ...emptyPaperDraft, cells }, elements);
    expect(found.map(({ ratingPct }) => ratingPct)).toEqual([110, 100, 110]);
    expect(found.map(({ isFilledIn }) => isFilledIn)).toEqual([false, true, true]);
  });

  it('show without a rating the very one that they will count with', () => {
    const cells = {
      '1:0': { ...emptyCell, time: '0.2' },
      '2:0': { ...emptyCell, time: '0.3', rating: '105' },
      '3:0': { ...emptyCell, time: '0.3' },
      '4:0': { ...emptyCell, time: '0.3', rating: '110' },
      '5:0': { ...emptyCell, time: '0.3' },
    };
    const draft = { ...emptyPaperDraft, cells };
    const counted = cellsOf(draft, elements).filter(({ isFilledIn }) => isFilledIn);
    expect(counted.map(({ cycle }) => [cycle, carriedRating(draft, cycle, 0)])).toEqual(
      counted.map(({ cycle, ratingPct }) => [cycle, String(ratingPct)]),
    );
    expect([1, 3, 5, 6].map((cycle) => carriedRating(draft, cycle, 0))).toEqual(['100', '105', '110', '110']);
  });

  it('are none where nothing was typed, but for a break point not seen between two that were', () => {
    const cells = { '1:0': { ...emptyCell, time: '0.2' }, '2:0': { ...emptyCell, time: '1.4' } };
    const read = (reads: 'own' | 'watch') =>
      cellsOf({ ...emptyPaperDraft, reads, cells }, elements).map(({ cycle, elementIndex, ms }) => [
        cycle,
        elementIndex,
        ms,
      ]);
    expect(read('own')).toEqual([
      [1, 0, 12_000],
      [2, 0, 84_000],
    ]);
    expect(read('watch')).toEqual([
      [1, 0, 12_000],
      [1, 1, null],
      [2, 0, 84_000],
    ]);
  });
});

describe('a sheet that is to be kept', () => {
  const asked = (cells: Record<string, Partial<typeof emptyCell>>) => {
    const typed = Object.fromEntries(
      Object.entries(cells).map(([key, cell]) => [key, { ...emptyCell, ...cell }]),
    );
    const draft = { ...emptyPaperDraft, cells: typed };
    return paperQuestions(draft, elements, cellsOf(draft, elements));
  };
  const whole = {
    '1:0': { time: '0.2', rating: '95' },
    '1:1': { time: '0.8' },
    '1:2': { time: '1', rating: '100' },
  };

  it('is not asked about where all of it is there', () => {
    expect(asked(whole)).toEqual([]);
  });

  it('is asked about an element that a cycle lacks, and about one that was never timed', () => {
    const { '1:2': _, ...noBlade } = whole;
    expect(asked(noBlade)).toEqual([expect.stringContaining('no time of Blade')]);
    expect(asked({ ...whole, '2:0': { time: '0.3' } })).toEqual([expect.stringContaining('Bore (cycle 2)')]);
  });

  it('is asked about a rating that was not typed, and about one outside 50 to 150', () => {
    expect(asked({ ...whole, '1:0': { time: '0.2' } })).toEqual([
      expect.stringContaining('No rating was typed for Load'),
    ]);
    expect(asked({ ...whole, '1:0': { time: '0.2', rating: '160' } })).toEqual([
      expect.stringContaining('Load (cycle 1) with 160'),
    ]);
  });
});
