import { describe, expect, it } from 'vitest';
import { isShown, type MoreGood, moreGoodParts } from '../../../src/domain/cell/compare-cells';
import type { CellRun } from '../../../src/domain/cell/simulate-cell';
import { differenceText } from '../../../src/screens/cell/change-figures';

const more = (lower: number, upper: number): MoreGood => ({
  perDay: { difference: (lower + upper) / 2, lower, upper },
  lowDay: { lower, upper },
});

const runOf = (goodByDay: readonly number[]) => ({ goodByDay }) as unknown as CellRun;
const days = Array.from({ length: 60 }, (_, day) => 250 + ((day * 17) % 23));

describe('a difference of good parts a day', () => {
  it('whose interval holds 0 is said to be not shown, and one that does not is said as it is', () => {
    expect(differenceText(-0.6, more(-1.5, 0.3))).toBe('−0.6 ± 0.9, not shown');
    expect(differenceText(7.3, more(5.3, 9.3))).toBe('+7.3 ± 2.0');
    expect(differenceText(-7.3, more(-9.3, -5.3))).toBe('−7.3 ± 2.0');
  });

  it('of the day that one in ten is worse than is shown where every day has three more, and not where one has one less', () => {
    const threeMore = moreGoodParts(runOf(days), runOf(days.map((good) => good + 3)));
    expect(threeMore.lowDay.lower).toBeCloseTo(3, 9);
    expect(threeMore.lowDay.upper).toBeCloseTo(3, 9);
    expect(isShown(threeMore.lowDay)).toBe(true);
    const low = days.indexOf(Math.min(...days));
    const oneLess = moreGoodParts(
      runOf(days),
      runOf(days.map((good, day) => (day === low ? good - 1 : good))),
    );
    expect(isShown(oneLess.lowDay)).toBe(false);
    expect(isShown(oneLess.perDay)).toBe(false);
  });
});
