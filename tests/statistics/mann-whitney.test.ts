import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mannWhitney } from '../../src/statistics/mann-whitney';
import { badReadings, saysRule } from './bad-readings';

const values = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 25 });

describe('mannWhitney', () => {
  it('counts 2 of 35 orders when three values all lie below four others', () => {
    const { u, probability, shareLarger } = mannWhitney([1, 2, 3], [4, 5, 6, 7]);
    expect(u).toBe(0);
    expect(shareLarger).toBe(0);
    expect(probability).toBeCloseTo(2 / 35, 14);
  });

  it('keeps the digits of a very small probability: 2 in C(98, 49) for two samples of 49 apart', () => {
    const low = Array.from({ length: 49 }, (_, i) => i);
    const high = low.map((value) => value + 100);
    let orders = 1;
    for (let i = 1; i <= 49; i += 1) orders = (orders * (49 + i)) / i;
    expect((mannWhitney(low, high).probability * orders) / 2).toBeCloseTo(1, 12);
  });

  it('approximates when values are equal or a sample has 50, and says so', () => {
    expect(mannWhitney([1, 2, 2], [2, 3]).method).toBe('normal');
    const many = Array.from({ length: 50 }, (_, i) => i + 0.5);
    expect(mannWhitney(many, [10, 20]).method).toBe('normal');
    expect(mannWhitney(many.slice(1), [10, 20]).method).toBe('exact');
  });

  it('shares the pairs between the two sides, and keeps the probability, when they change places', () => {
    fc.assert(
      fc.property(values, values, (a, b) => {
        if (new Set([...a, ...b]).size === 1) return;
        const forward = mannWhitney(a, b);
        const backward = mannWhitney(b, a);
        expect(forward.u + backward.u).toBe(a.length * b.length);
        expect(backward.probability).toBeCloseTo(forward.probability, 12);
      }),
    );
  });

  it('sees only the order: any rising change of scale leaves the answer alone', () => {
    fc.assert(
      fc.property(values, values, (a, b) => {
        if (new Set([...a, ...b]).size === 1) return;
        const stretched = mannWhitney(
          a.map((x) => Math.exp(x / 10)),
          b.map((x) => Math.exp(x / 10)),
        );
        expect(stretched).toEqual(mannWhitney(a, b));
      }),
    );
  });

  it('has a probability between 0 and 1', () => {
    fc.assert(
      fc.property(values, values, (a, b) => {
        if (new Set([...a, ...b]).size === 1) return;
        const { probability } = mannWhitney(a, b);
        expect(probability).toBeGreaterThan(0);
        expect(probability).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('refuses values that are all equal, and the exact method where it cannot count', () => {
    expect(() => mannWhitney([3, 3], [3])).toThrow('mannWhitney requires readings that differ');
    expect(() => mannWhitney([1, 2], [2], { method: 'exact' })).toThrow(saysRule('mannWhitney'));
  });

  it.each(badReadings)('refuses values with %s', (_, bad) => {
    expect(() => mannWhitney(bad, [1, 2])).toThrow(saysRule('mannWhitney'));
    expect(() => mannWhitney([1, 2], bad)).toThrow(saysRule('mannWhitney'));
  });
});
