import { describe, expect, it } from 'vitest';
import { cellDays } from '../../../src/domain/cell/cell-days';
import { firstSettings } from '../../../src/domain/cell/fold-cell-settings';
import { foldLots } from '../../../src/domain/cell/fold-lots';
import { planCell } from '../../../src/screens/cell/plan-cell';
import { dayMsOf, reckonParts } from '../../../src/screens/cell/reckon-parts';
import type { CellData } from '../../../src/screens/cell/use-cell';
import { meanCell, occasionals } from '../../domain/cell/demo-cell';
import { stampAt } from '../../support/records';

const HOUR_MS = 3_600_000;
const work = { ...meanCell('M'), occasionals: occasionals() };

function cellWith(dayMs: number | null, byOther: readonly string[] = []): CellData {
  return {
    studies: [
      {
        partCode: 'M',
        study: 't:1',
        title: 'M',
        startedAt: stampAt(0),
        of: 1,
        why: 'newest',
        flagged: 0,
        work,
      },
    ],
    partial: [],
    history: {
      days: { ...cellDays([]), days: dayMs === null ? 0 : 1, dayMs },
      working: [],
      lots: foldLots([]),
    },
    settings: { ...firstSettings, arrivalLot: 20, refillAt: 3, trolley: 8, byOther },
  };
}

describe('the cell as the screen reckons it', () => {
  it('has the day of its turns, and eight hours while those are too few to be a day', () => {
    expect(dayMsOf(cellWith(7 * HOUR_MS))).toBe(7 * HOUR_MS);
    expect(dayMsOf(cellWith(null))).toBe(8 * HOUR_MS);
    expect(dayMsOf(cellWith(600_000))).toBe(8 * HOUR_MS);
  });

  it('exchanges trolleys as often as they go: half the size, twice as often', () => {
    const setup = { machines: 1, buffer: 1, arrivalLot: 20, refillAt: 3, trolley: 4 };
    const { work: planned } = planCell(cellWith(null), work, setup);
    expect(planned.occasionals.map(({ everyParts }) => everyParts)).toEqual([20, 4, 40]);
  });

  it('gives what another person does to that person', () => {
    const [part] = reckonParts(cellWith(null, ['E3', 'E4']));
    expect(part!.cycle.otherMs / 60_000).toBeCloseTo(0.34, 6);
    expect(part!.cycle.internalMs / 60_000).toBeCloseTo(0.9388 - 0.34, 3);
  });
});
