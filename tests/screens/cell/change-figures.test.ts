import { describe, expect, it } from 'vitest';
import { compareRuns, isShown, moreGood } from '../../../src/domain/cell/compare-cells';
import type { CellRun } from '../../../src/domain/cell/simulate-cell';
import { differenceText } from '../../../src/screens/cell/change-figures';
import { leadDigits } from '../../../src/screens/cell/shown-difference';

const between = (lower: number, upper: number) => ({ difference: (lower + upper) / 2, lower, upper });
const runOf = (goodByDay: readonly number[]): CellRun => ({
  days: goodByDay.length,
  goodByDay,
  leadTimesMs: new Float64Array(),
  releasedByDay: goodByDay.map(() => 0),
  parts: 0,
  scrapped: 0,
  intervalMs: 0,
  flowMs: 0,
  trolleyMs: 0,
  meanInside: 0,
  insideByLittle: 0,
  machineRuns: 0,
  operatorWaits: 0,
});
const days = Array.from({ length: 60 }, (_, day) => 250 + ((day * 17) % 23));

describe('a difference', () => {
  it('whose interval holds 0 is said to be none that shows, and one that does not is said as it is', () => {
    expect(differenceText(-0.6, between(-1.5, 0.3))).toBe('−0.6 ± 0.9, none that shows');
    expect(differenceText(7.3, between(5.3, 9.3))).toBe('+7.3 ± 2.0');
    expect(differenceText(-7.3, between(-9.3, -5.3))).toBe('−7.3 ± 2.0');
  });

  it('of lead time is in minutes, and none that shows where no lot left', () => {
    expect(differenceText(-0.7, between(-60_000, -24_000), 1 / 60_000)).toBe('−0.7 ± 0.3');
    expect(differenceText(-0.7, compareRuns(runOf(days), runOf(days), 1).lead)).toBe('none that shows');
  });

  it('of a lead time below ten minutes is told in thousandths, as the time a part takes is', () => {
    expect([leadDigits(27_000), leadDigits(599_000), leadDigits(600_000)]).toEqual([3, 3, 1]);
    expect(differenceText(-0.052, between(-3_600, -2_640), 1 / 60_000, leadDigits(27_000))).toBe(
      '−0.052 ± 0.008',
    );
  });

  it('of nothing is plain', () => {
    expect(differenceText(0, between(0, 0))).toBe('0.0');
  });
});

describe('a difference of good parts', () => {
  it('of the day that one in ten is worse than is shown where every day has three more, and not where one has one less', () => {
    const threeMore = compareRuns(runOf(days), runOf(days.map((good) => good + 3)), 1);
    expect(threeMore.lowDay.lower).toBeCloseTo(3, 9);
    expect(threeMore.lowDay.upper).toBeCloseTo(3, 9);
    expect(isShown(threeMore.lowDay)).toBe(true);
    const low = days.indexOf(Math.min(...days));
    const lessOnce = days.map((good, day) => (day === low ? good - 1 : good));
    const oneLess = compareRuns(runOf(days), runOf(lessOnce), 1);
    expect(isShown(oneLess.lowDay)).toBe(false);
    expect(isShown(oneLess.perDay)).toBe(false);
  });

  it('a person-hour stands on the hours of each: a second person who adds a tenth halves it', () => {
    const { difference, lower, upper } = moreGood(
      runOf(days),
      runOf(days.map((good) => 1.1 * good)),
      [7, 14],
    );
    const mean = days.reduce((sum, good) => sum + good, 0) / days.length;
    expect(difference).toBeCloseTo((1.1 * mean) / 14 - mean / 7, 9);
    expect(lower).toBeLessThan(upper);
    expect(upper).toBeLessThan(0);
  });
});
