import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grubbsCriticalValue } from '../../src/statistics/grubbs-critical-value';
import { badFractions, saysRule } from './bad-readings';

describe('grubbsCriticalValue', () => {
  // Computed from the formula with SciPy's Student quantile; ASTM E178 as quoted prints two places of each.
  it.each([
    [3, 1.154],
    [4, 1.481],
    [5, 1.715],
    [6, 1.887],
    [7, 2.02],
    [8, 2.127],
  ])('for %i readings at 5 % is %f', (n, critical) => {
    expect(grubbsCriticalValue(n)).toBeCloseTo(critical, 3);
  });

  it('never passes (n − 1)/√n, the farthest that any reading can lie', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 1000 }),
        fc.double({ min: 1e-9, max: 0.5, noNaN: true }),
        (n, significance) => {
          expect(grubbsCriticalValue(n, significance)).toBeLessThanOrEqual((n - 1) / Math.sqrt(n));
        },
      ),
    );
  });

  it.each([2, 0, 7.5, Number.NaN, 1e308])('refuses %s readings', (n) => {
    expect(() => grubbsCriticalValue(n)).toThrow(saysRule('grubbsCriticalValue'));
  });

  it.each(badFractions)('refuses the significance %s', (significance) => {
    expect(() => grubbsCriticalValue(8, significance)).toThrow(saysRule('grubbsCriticalValue'));
  });
});
