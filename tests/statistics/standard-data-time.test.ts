import { describe, expect, it } from 'vitest';
import { standardDataTime } from '../../src/statistics/standard-data-time';
import { saysRule } from './bad-readings';

describe('standardDataTime', () => {
  it('adds the constant and each driver at its rate', () => {
    expect(standardDataTime(2, [0.5, 3], [10, 1])).toBe(10);
    expect(standardDataTime(2, [], [])).toBe(2);
  });

  it.each([
    ['a driver too few', 1, [1, 2], [1]],
    ['a driver too many', 1, [1], [1, 2]],
    ['a driver of NaN', 1, [1], [Number.NaN]],
    ['a driver of Infinity', 1, [1], [Number.POSITIVE_INFINITY]],
    ['a sum past every double', 1e308, [1e308], [10]],
    ['a constant of NaN', Number.NaN, [1], [1]],
  ])('refuses %s', (_, constant, coefficients, drivers) => {
    expect(() => standardDataTime(constant, coefficients, drivers)).toThrow(saysRule('standardDataTime'));
  });
});
