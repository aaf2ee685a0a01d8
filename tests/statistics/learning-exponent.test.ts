import { describe, expect, it } from 'vitest';
import { learningExponent } from '../../src/statistics/learning-exponent';
import { saysRule } from './bad-readings';

describe('learningExponent', () => {
  it('gives back the rate at a doubling', () => {
    for (const rate of [0.5, 0.7, 0.8, 0.95, 1]) expect(2 ** learningExponent(rate)).toBeCloseTo(rate, 15);
  });

  it.each([0, -0.8, 1.01, 80, Number.NaN, Number.POSITIVE_INFINITY])('refuses the rate %s', (rate) => {
    expect(() => learningExponent(rate)).toThrow(saysRule('learningExponent'));
  });
});
