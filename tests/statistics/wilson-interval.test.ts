import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wilsonInterval } from '../../src/statistics/wilson-interval';
import { badFractions, saysRule } from './bad-readings';

describe('wilsonInterval', () => {
  it('lies inside 0 to 1 and holds the share itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), fc.double({ min: 0, max: 1, noNaN: true }), (n, p) => {
        const counted = Math.round(n * p);
        const { lower, upper } = wilsonInterval(counted, n);
        expect(lower).toBeGreaterThanOrEqual(0);
        expect(upper).toBeLessThanOrEqual(1);
        expect(lower).toBeLessThanOrEqual(counted / n);
        expect(upper).toBeGreaterThanOrEqual(counted / n);
      }),
    );
  });

  it('is mirrored when the bad parts are counted instead of the good', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.double({ min: 0, max: 1, noNaN: true }), (n, p) => {
        const good = Math.round(n * p);
        const [a, b] = [wilsonInterval(good, n), wilsonInterval(n - good, n)];
        expect(a.lower).toBeCloseTo(1 - b.upper, 12);
        expect(a.upper).toBeCloseTo(1 - b.lower, 12);
      }),
    );
  });

  it('says something about a day without a fault: from 0 to z²/(n + z²)', () => {
    const { lower, upper } = wilsonInterval(0, 200);
    // z = 1.959964, as the normal table prints; the limit at x = 0 is z²/(n + z²).
    expect(lower).toBe(0);
    expect(upper).toBeCloseTo(1.959964 ** 2 / (200 + 1.959964 ** 2), 8);
  });

  it('keeps the digits of a tiny lower limit', () => {
    // One in 10⁹: the printed form would leave three digits of it. Limit of the quotient form for large n.
    const z2 = 1.959963984540054 ** 2;
    const expected = 1e-9 / (1 + z2 / 2 + Math.sqrt(z2 * (1 + z2 / 4)));
    expect(wilsonInterval(1, 1e9).lower / expected).toBeCloseTo(1, 8);
  });

  it('never widens with more parts of the same share', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 500 }), (n, k) => {
        const counted = Math.min(k, n);
        const few = wilsonInterval(counted, n);
        const many = wilsonInterval(2 * counted, 2 * n);
        expect(many.upper - many.lower).toBeLessThan(few.upper - few.lower);
      }),
    );
  });

  it.each([
    [1, 0],
    [-1, 5],
    [6, 5],
    [1.5, 5],
    [1, 2.5],
    [Number.NaN, 5],
    [1, Number.POSITIVE_INFINITY],
    [1, 1e308],
  ])('refuses %s of %s', (counted, inspected) => {
    expect(() => wilsonInterval(counted, inspected)).toThrow(saysRule('wilsonInterval'));
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => wilsonInterval(3, 9, confidence)).toThrow(saysRule('wilsonInterval'));
  });
});
