import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { learningCurveUnit } from '../../src/statistics/learning-curve-unit';
import { saysRule } from './bad-readings';

const rate = fc.double({ min: 0.5, max: 1, noNaN: true });

describe('learningCurveUnit', () => {
  it('falls to the rate whenever the number of the unit doubles', () => {
    fc.assert(
      fc.property(rate, fc.integer({ min: 1, max: 1e6 }), (share, unit) => {
        const ratio = learningCurveUnit(10, share, 2 * unit) / learningCurveUnit(10, share, unit);
        expect(ratio).toBeCloseTo(share, 10);
      }),
    );
  });

  it('is flat without learning, and follows the unit of time', () => {
    expect(learningCurveUnit(7, 1, 1234)).toBe(7);
    expect(learningCurveUnit(7 * 60, 0.8, 9)).toBeCloseTo(60 * learningCurveUnit(7, 0.8, 9), 10);
  });

  it.each([
    [0, 0.8, 2],
    [-1, 0.8, 2],
    [Number.NaN, 0.8, 2],
    [Number.POSITIVE_INFINITY, 0.8, 2],
    [5, 0, 2],
    [5, 1.2, 2],
    [5, Number.NaN, 2],
    [5, 0.8, 0],
    [5, 0.8, 1.5],
    [5, 0.8, Number.NaN],
    [5, 0.8, 1e308],
  ])('refuses first time %s, rate %s, unit %s', (first, share, unit) => {
    expect(() => learningCurveUnit(first, share, unit)).toThrow(saysRule('learningCurveUnit'));
  });
});
