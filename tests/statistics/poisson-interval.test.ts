import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poissonInterval } from '../../src/statistics/poisson-interval';
import { badFractions, saysRule } from './bad-readings';

describe('poissonInterval', () => {
  it('shows how little one occurrence in 30 cycles says: once in 5 to once in 1185', () => {
    // Garwood's limits for a count of one are 0.0253 and 5.572, as tables print.
    const { rate, lower, upper } = poissonInterval(1, 30);
    expect(rate).toBeCloseTo(1 / 30, 15);
    expect(1 / upper).toBeCloseTo(30 / 5.572, 2);
    expect(Math.abs(1 / lower - 30 / 0.0253)).toBeLessThan(1);
  });

  it('has the closed forms at zero and one: −ln(α/2) above none, −ln(1 − α/2) below one', () => {
    expect(poissonInterval(0, 1).upper).toBeCloseTo(-Math.log(0.025), 10);
    expect(poissonInterval(0, 1).lower).toBe(0);
    expect(poissonInterval(1, 1).lower).toBeCloseTo(-Math.log(0.975), 10);
  });

  it('divides by the exposure and never widens, relative to the rate, with more of both', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 1000 }), (count, exposure) => {
        const one = poissonInterval(count, exposure);
        const unit = poissonInterval(count, 1);
        expect(one.upper * exposure).toBeCloseTo(unit.upper, 6);
        const double = poissonInterval(2 * count, 2 * exposure);
        expect(double.upper - double.lower).toBeLessThan(one.upper - one.lower);
        expect(one.lower).toBeLessThan(one.rate);
        expect(one.upper).toBeGreaterThan(one.rate);
      }),
      { numRuns: 50 },
    );
  });

  it.each([-1, 2.5, Number.NaN, Number.POSITIVE_INFINITY, 1e308])('refuses the count %s', (count) => {
    expect(() => poissonInterval(count, 10)).toThrow(saysRule('poissonInterval'));
  });

  it.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY, 1e308])('refuses the exposure %s', (exposure) => {
    expect(() => poissonInterval(3, exposure)).toThrow(saysRule('poissonInterval'));
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => poissonInterval(3, 10, confidence)).toThrow(saysRule('poissonInterval'));
  });
});
