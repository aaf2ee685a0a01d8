import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { naturalLimits } from '../../src/statistics/natural-limits';
import { badReadings, saysRule } from './bad-readings';

const readings = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 40 });

describe('naturalLimits', () => {
  it('lie 3·mR̄/d2 from the mean', () => {
    // Mean 11, moving ranges 2 2 2, d2 1.5 by choice: 11 ± 4.
    expect(naturalLimits([10, 12, 10, 12], 1.5)).toEqual({
      centre: 11,
      lower: 7,
      upper: 15,
      meanMovingRange: 2,
    });
  });

  it('are not widened by a slow drift, which the sample deviation would count as spread', () => {
    const drift = Array.from({ length: 40 }, (_, i) => 100 + i + (i % 2));
    const { upper } = naturalLimits(drift);
    expect(Math.max(...drift)).toBeGreaterThan(upper);
  });

  it('move with an added constant and stretch with a factor', () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: -100, max: 100 }), (x, shift) => {
        const plain = naturalLimits(x);
        const moved = naturalLimits(x.map((value) => 2 * value + shift));
        expect(moved.upper).toBeCloseTo(2 * plain.upper + shift, 4);
        expect(moved.meanMovingRange).toBeCloseTo(2 * plain.meanMovingRange, 4);
      }),
    );
  });

  it('collapse onto readings that are all equal', () => {
    expect(naturalLimits([3, 3, 3])).toEqual({ centre: 3, lower: 3, upper: 3, meanMovingRange: 0 });
  });

  it.each([...badReadings, ['one alone', [1]] as const])('refuses readings with %s', (_, x) => {
    expect(() => naturalLimits(x)).toThrow(saysRule('naturalLimits'));
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses the d2 %s', (d2) => {
    expect(() => naturalLimits([1, 2], d2)).toThrow('naturalLimits requires a d2 from 0.001 to 1000');
  });
});
