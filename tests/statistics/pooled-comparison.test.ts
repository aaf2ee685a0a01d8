import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pooledComparison } from '../../src/statistics/pooled-comparison';
import { welchComparison } from '../../src/statistics/welch-comparison';
import { badFractions, badReadings, saysRule } from './bad-readings';

describe('pooledComparison', () => {
  it('has the t of Welch, and n₁ + n₂ − 2 degrees, when both samples have one size', () => {
    const readings = fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(readings, readings, (a, b) => {
        if (new Set(a).size === 1 && new Set(b).size === 1) return;
        const pooled = pooledComparison(a, b);
        expect(pooled.degreesOfFreedom).toBe(10);
        expect(pooled.t).toBeCloseTo(welchComparison(a, b).t, 9);
      }),
    );
  });

  it('leans on the larger sample, where Welch does not', () => {
    // Deviations 10 and 1 of 100 and 5: the pooled error is √((99·100 + 4)/103)·√(1/100 + 1/5), by hand.
    const { standardError } = pooledComparison(
      { count: 100, mean: 0, deviation: 10 },
      { count: 5, mean: 0, deviation: 1 },
    );
    expect(standardError).toBeCloseTo(Math.sqrt(9904 / 103) * Math.sqrt(0.21), 12);
  });

  it('refuses two samples without spread', () => {
    expect(() => pooledComparison([5, 5], [6, 6])).toThrow('pooledComparison requires readings that differ');
  });

  it.each([...badReadings, ['one alone', [1]] as const])('refuses readings with %s', (_, x) => {
    expect(() => pooledComparison(x, [1, 2, 3])).toThrow(saysRule('pooledComparison'));
    expect(() => pooledComparison([1, 2, 3], x)).toThrow(saysRule('pooledComparison'));
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => pooledComparison([1, 2], [3, 5], { confidence })).toThrow(saysRule('pooledComparison'));
  });
});
