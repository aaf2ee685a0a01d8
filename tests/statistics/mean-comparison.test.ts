import { describe, expect, it } from 'vitest';
import { meanComparison } from '../../src/statistics/mean-comparison';
import { saysRule } from './bad-readings';

describe('meanComparison', () => {
  it('reaches t(0.975) standard errors to each side: 2.2281 on 10 degrees, as the table prints', () => {
    const { lower, upper, t } = meanComparison('welchComparison', 3, 2, 10, 0.95);
    expect(t).toBe(1.5);
    expect(upper - 3).toBeCloseTo(2 * 2.2281, 3);
    expect(3 - lower).toBeCloseTo(2 * 2.2281, 3);
  });

  it('has a probability of one for no difference at all', () => {
    expect(meanComparison('welchComparison', 0, 2, 10, 0.95).probability).toBe(1);
  });

  it('contains zero exactly when the probability is above one minus the confidence', () => {
    for (let difference = -6; difference <= 6; difference += 0.25) {
      const { lower, upper, probability } = meanComparison('welchComparison', difference, 1, 7, 0.95);
      expect(lower <= 0 && upper >= 0).toBe(probability >= 0.05);
    }
  });

  it.each([0, -1, Number.NaN])('refuses the standard error %s in the name of its caller', (error) => {
    expect(() => meanComparison('pooledComparison', 1, error, 5, 0.95)).toThrow(saysRule('pooledComparison'));
  });
});
