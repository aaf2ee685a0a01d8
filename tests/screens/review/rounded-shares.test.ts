import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundedShares } from '../../../src/screens/review/rounded-shares';
import { sideOfTarget } from '../../../src/screens/review/side-of-target';

describe('roundedShares', () => {
  it('gives what rounding left over to the largest remainders', () => {
    // 1.4 + 1.4 + 1.4 = 4.2, printed 4: rounded one by one it would be 3.
    expect(roundedShares([1.4, 1.4, 1.4], 0)).toEqual([2, 1, 1]);
    // 10.12 is printed 10.1, and 10.06 has the largest remainder. 33.33… three times is 100: the first gets the hundredth.
    expect(roundedShares([100 / 3, 100 / 3, 100 / 3], 0)).toEqual([34, 33, 33]);
    expect(roundedShares([10.06, 0.03, 0.03], 1)).toEqual([10.1, 0, 0]);
  });

  it('adds up to the rounded sum, each within one unit of itself', () => {
    const anyAmounts = fc.array(fc.double({ min: 0, max: 600, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(anyAmounts, (amounts) => {
        const rounded = roundedShares(amounts, 1);
        const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
        expect(Math.abs(sum(rounded) - sum(amounts))).toBeLessThanOrEqual(0.05 + 1e-9);
        for (const [place, value] of rounded.entries())
          expect(Math.abs(value - amounts[place]!)).toBeLessThan(0.1 + 1e-9);
      }),
      { seed: 1792, numRuns: 500 },
    );
  });

  it('gives nothing for nothing, and refuses what is less', () => {
    expect(roundedShares([], 1)).toEqual([]);
    expect(roundedShares([0, 0], 1)).toEqual([0, 0]);
    expect(() => roundedShares([-1], 0)).toThrow('roundedShares requires amounts of 0 or more');
    expect(() => roundedShares([Number.NaN], 0)).toThrow(RangeError);
  });
});

describe('sideOfTarget', () => {
  it('tells no more than the whole per cent that is printed', () => {
    expect(sideOfTarget(0.9949)).toBe('faster');
    expect(sideOfTarget(0.996)).toBe('level');
    expect(sideOfTarget(1.0049)).toBe('level');
    expect(sideOfTarget(1.005001)).toBe('slower');
  });
});
