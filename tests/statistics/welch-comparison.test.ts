import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { welchComparison } from '../../src/statistics/welch-comparison';
import { badFractions, badReadings, saysRule } from './bad-readings';

const readings = fc
  .array(fc.integer({ min: 1, max: 100_000 }), { minLength: 2, maxLength: 30 })
  .filter((x) => new Set(x).size > 1);
const summary = fc.record({
  count: fc.integer({ min: 2, max: 500 }),
  mean: fc.integer({ min: -1000, max: 1000 }),
  deviation: fc.integer({ min: 1, max: 100 }),
});

describe('welchComparison', () => {
  it('has between the smaller n − 1 and n₁ + n₂ − 2 degrees of freedom', () => {
    fc.assert(
      fc.property(summary, summary, (a, b) => {
        const { degreesOfFreedom } = welchComparison(a, b);
        expect(degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(a.count, b.count) - 1 - 1e-9);
        expect(degreesOfFreedom).toBeLessThanOrEqual((a.count + b.count - 2) * (1 + 1e-12));
      }),
    );
  });

  it('only changes sign when before and after change places', () => {
    fc.assert(
      fc.property(readings, readings, (a, b) => {
        const forward = welchComparison(a, b);
        const backward = welchComparison(b, a);
        expect(backward.difference).toBeCloseTo(-forward.difference, 9);
        expect(backward.t).toBeCloseTo(-forward.t, 9);
        expect(backward.degreesOfFreedom).toBeCloseTo(forward.degreesOfFreedom, 9);
        expect(backward.probability).toBeCloseTo(forward.probability, 12);
        expect(backward.lower).toBeCloseTo(-forward.upper, 6);
      }),
    );
  });

  it('keeps t and its probability in any unit, while the difference follows the unit', () => {
    fc.assert(
      fc.property(readings, readings, fc.constantFrom(60, 0.001, 1 / 60), (a, b, factor) => {
        const one = welchComparison(a, b);
        const other = welchComparison(
          a.map((x) => x * factor),
          b.map((x) => x * factor),
        );
        expect(other.t).toBeCloseTo(one.t, 6);
        expect(other.probability).toBeCloseTo(one.probability, 9);
        expect(other.difference / factor).toBeCloseTo(one.difference, 6);
      }),
    );
  });

  it('does not depend on the order of the readings, nor on an amount added to all of them', () => {
    fc.assert(
      fc.property(readings, readings, fc.integer({ min: -5000, max: 5000 }), (a, b, shift) => {
        const one = welchComparison(a, b);
        const other = welchComparison(a.map((x) => x + shift).reverse(), b.map((x) => x + shift).reverse());
        expect(other.t).toBeCloseTo(one.t, 9);
        expect(other.upper).toBeCloseTo(one.upper, 5);
      }),
    );
  });

  it('never widens with more readings of the same spread on both sides', () => {
    fc.assert(
      fc.property(summary, summary, fc.integer({ min: 2, max: 5 }), (a, b, times) => {
        const few = welchComparison(a, b);
        const many = welchComparison({ ...a, count: a.count * times }, { ...b, count: b.count * times });
        expect(many.upper - many.lower).toBeLessThan(few.upper - few.lower);
      }),
    );
  });

  it('widens with the confidence asked for', () => {
    const narrow = welchComparison([1, 2, 3], [2, 3, 5], { confidence: 0.9 });
    const wide = welchComparison([1, 2, 3], [2, 3, 5], { confidence: 0.99 });
    expect(wide.lower).toBeLessThan(narrow.lower);
    expect(wide.upper).toBeGreaterThan(narrow.upper);
  });

  it('keeps its digits where a sum of squares would lose them all', () => {
    // The same two samples with 1e9 added: the difference and t stay.
    const near = welchComparison([1, 2, 3], [2, 3, 5]);
    const far = welchComparison([1e9 + 1, 1e9 + 2, 1e9 + 3], [1e9 + 2, 1e9 + 3, 1e9 + 5]);
    // A double near 1e9 has steps of 1e-7.
    expect(far.t).toBeCloseTo(near.t, 6);
  });

  it('compares when one side has no spread, and refuses when neither has', () => {
    expect(welchComparison([5, 5, 5], [4, 6, 8]).degreesOfFreedom).toBeCloseTo(2, 12);
    expect(() => welchComparison([5, 5, 5], [6, 6])).toThrow('welchComparison requires readings that differ');
    expect(() => welchComparison([5, 5], [5, 5])).toThrow(RangeError);
  });

  it.each([...badReadings, ['one alone', [1]] as const])(
    'refuses readings with %s, on either side',
    (_, x) => {
      expect(() => welchComparison(x, [1, 2, 3])).toThrow(saysRule('welchComparison'));
      expect(() => welchComparison([1, 2, 3], x)).toThrow(saysRule('welchComparison'));
    },
  );

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => welchComparison([1, 2], [3, 5], { confidence })).toThrow(saysRule('welchComparison'));
  });

  it('refuses a summary so exact that t would be infinite, instead of answering Infinity', () => {
    const exact = { count: 5, mean: 1, deviation: 1e-320 };
    expect(() => welchComparison(exact, { ...exact, mean: 2 })).toThrow(saysRule('welchComparison'));
  });
});
