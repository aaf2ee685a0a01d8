import { describe, expect, it } from 'vitest';
import { noChange } from '../../../src/domain/cell/cell-change';
import { cellCycle } from '../../../src/domain/cell/cell-cycle';
import { elementEffects } from '../../../src/domain/cell/element-effects';
import { secondOut } from '../../../src/domain/cell/second-out';
import type { ReckonedPart } from '../../../src/screens/cell/reckon-parts';
import { shownDifference } from '../../../src/screens/cell/shown-difference';
import { activeChanges, nothingTried, type TriedChange } from '../../../src/screens/cell/tried-change';
import { meanCell } from '../../domain/cell/demo-cell';

const work = meanCell('M');
const part: ReckonedPart = {
  key: 'part M',
  partCode: 'M',
  work,
  cycle: cellCycle(work),
  wholeCycles: 1,
  effects: elementEffects(work),
  seconds: secondOut(work),
  precision: null,
  source: null,
  mix: [],
};
const now = { buffer: 1, arrivalLot: 20, refillAt: 3, trolley: 8 };

const tried: TriedChange = {
  change: {
    ...noChange,
    machineSpeedPct: 125,
    elementPct: { E2: 80, E6: 90, E3: 100 },
    moved: { E4: 'other', E5: 'other', W2: 'internal' },
  },
  lots: { trolley: 4, arrivalLot: 20 },
  seed: 3,
};

describe('what is tried', () => {
  it('is told one by one, several elements among it, and nothing that is as it was', () => {
    expect(activeChanges(tried, part, now).map(({ text }) => text)).toEqual([
      'Machine speed: 125\u00a0%',
      'E2: 80\u00a0%',
      'E6: 90\u00a0%',
      'by another person: E4, E5',
      'Parts that leave together: 4',
    ]);
  });

  it('is without one of them what is left, and the same luck', () => {
    for (const { text, without } of activeChanges(tried, part, now)) {
      const left = activeChanges(without, part, now).map((own) => own.text);
      expect(left).toHaveLength(4);
      expect(left).not.toContain(text);
      expect(without.seed).toBe(3);
    }
  });

  it('is nothing at first', () => {
    expect(activeChanges(nothingTried, part, now)).toEqual([]);
  });
});

it('a difference is that of the figures that are shown', () => {
  // 1.2 and 1.0 are shown, where the exact ones are 0.1 apart.
  expect(shownDifference(1.049, 1.151, 1)).toBeCloseTo(0.2, 12);
});
