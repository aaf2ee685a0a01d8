import { describe, expect, it } from 'vitest';
import { extrapolationCheck } from '../../src/statistics/extrapolation-check';
import { badReadings, saysRule } from './bad-readings';

describe('extrapolationCheck', () => {
  const studied = [2, 6, 4, 6];

  it.each([
    [2, 'inside', 'within', 0],
    [6, 'inside', 'within', 0],
    [6.4, 'just-outside', 'above', 0.1],
    [6.5, 'outside', 'above', 0.125],
    [1.7, 'just-outside', 'below', 0.075],
    [0, 'outside', 'below', 0.5],
  ])('puts the size %f %s (%s) of sizes from 2 to 6', (size, standing, side, distance) => {
    const check = extrapolationCheck(studied, size, 0.1 + 1e-12);
    expect(check).toMatchObject({ standing, side });
    expect(check.distance).toBeCloseTo(distance, 12);
  });

  it('takes the tolerance it is given', () => {
    expect(extrapolationCheck(studied, 7, 0.3).standing).toBe('just-outside');
    expect(extrapolationCheck(studied, 6.01, 0).standing).toBe('outside');
  });

  it.each([...badReadings, ['one size', [3]] as const, ['one size twice', [3, 3]] as const])(
    'refuses studied sizes with %s',
    (_, bad) => {
      expect(() => extrapolationCheck(bad, 4)).toThrow(saysRule('extrapolationCheck'));
    },
  );

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308])('refuses the size %s', (size) => {
    expect(() => extrapolationCheck(studied, size)).toThrow(saysRule('extrapolationCheck'));
  });

  it.each([-0.1, Number.NaN])('refuses the tolerance %s', (tolerance) => {
    expect(() => extrapolationCheck(studied, 4, tolerance)).toThrow(saysRule('extrapolationCheck'));
  });
});
