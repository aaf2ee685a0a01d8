import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lackOfFit } from '../../src/statistics/lack-of-fit';
import { badReadings, saysRule } from './bad-readings';

const sizes = [1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4];
const scatter = [0.01, -0.02, 0.01, 0.02, -0.01, -0.01, 0, 0.01, -0.01, 0.01, 0, -0.01];

describe('lackOfFit', () => {
  it('is quiet about a straight line and loud about a curve with the same scatter', () => {
    const straight = lackOfFit(
      sizes,
      sizes.map((x, i) => 1 + 2 * x + scatter[i]!),
    );
    const curved = lackOfFit(
      sizes,
      sizes.map((x, i) => 1 + x * x + scatter[i]!),
    );
    expect(straight.probability).toBeGreaterThan(0.2);
    expect(curved.probability).toBeLessThan(1e-9);
    expect(curved.probability).toBeGreaterThan(0);
    expect(straight).toMatchObject({ fitFreedom: 2, errorFreedom: 8 });
  });

  it('has F = 0 and probability 1 when the means lie on a line', () => {
    // Means 1.5, 2.5, 3.5: on a line to the last bit.
    const answer = lackOfFit([1, 1, 2, 2, 3, 3], [1, 2, 2, 3, 3, 4]);
    expect(answer.f).toBeCloseTo(0, 20);
    expect(answer.probability).toBeCloseTo(1, 9);
  });

  it('does not change with the unit of time or the order of the readings', () => {
    const readings = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(readings, (y) => {
        const spread = new Set(sizes.map((x, i) => `${x}:${y[i]}`)).size;
        if (spread === 4) return;
        const one = lackOfFit(sizes, y);
        const other = lackOfFit(
          [...sizes].reverse(),
          [...y].reverse().map((value) => value * 60),
        );
        expect(other.f).toBeCloseTo(one.f, 6);
      }),
    );
  });

  it.each([
    ['two sizes', [1, 1, 2, 2], [1, 2, 3, 4]],
    ['one reading a size', [1, 2, 3, 4], [1, 2, 3, 5]],
    ['readings of a size that are all equal', [1, 1, 2, 2, 3, 3], [1, 1, 2, 2, 4, 4]],
    ['times that are all equal', [1, 1, 2, 2, 3, 3], [5, 5, 5, 5, 5, 5]],
    ['lists of two lengths', [1, 1, 2, 2, 3, 3], [1, 2, 3]],
    ['one reading', [1], [1]],
  ])('refuses %s', (_, x, y) => {
    expect(() => lackOfFit(x, y)).toThrow(saysRule('lackOfFit'));
  });

  it.each(badReadings)('refuses times, and sizes, with %s', (_, bad) => {
    const sound = bad.map((__, i) => i % 4);
    expect(() => lackOfFit(sound, bad)).toThrow(saysRule('lackOfFit'));
    expect(() => lackOfFit(bad, sound)).toThrow(saysRule('lackOfFit'));
  });
});
