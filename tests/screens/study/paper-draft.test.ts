import { describe, expect, it } from 'vitest';
import { cellsOf, emptyCell, emptyPaperDraft, typedMs } from '../../../src/screens/study/paper/paper-draft';
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
    expect(cellsOf({ ...emptyPaperDraft, cells }, elements).map(({ ratingPct }) => ratingPct)).toEqual([
      110, 100, 110,
    ]);
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
