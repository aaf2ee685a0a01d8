import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comparisonVerdict } from '../../src/statistics/comparison-verdict';
import { saysRule } from './bad-readings';

const threshold = 0.15;

describe('comparisonVerdict', () => {
  it.each([
    ['wholly beyond the threshold', -0.98, -0.74, 'improved'],
    ['wholly below zero but across the threshold', -0.3, -0.05, 'improved-size-uncertain'],
    ['across zero', -0.3, 0.05, 'not-shown'],
    ['across everything', -2, 2, 'not-shown'],
    ['wholly inside the threshold on both sides', -0.1, 0.12, 'no-difference-that-matters'],
    ['below zero, but by less than matters', -0.1, -0.02, 'no-difference-that-matters'],
    ['wholly above zero but across the threshold', 0.05, 0.3, 'worse-size-uncertain'],
    ['wholly beyond the threshold on the wrong side', 0.2, 0.3, 'worse'],
  ])('an interval %s (%f to %f) is %s', (_, lower, upper, verdict) => {
    expect(comparisonVerdict({ lower, upper }, { threshold })).toBe(verdict);
  });

  it('takes equivalence from the 90 % interval of the two one-sided tests where it is given', () => {
    const interval = { lower: -0.17, upper: 0.16 };
    const equivalence = { lower: -0.13, upper: 0.12 };
    expect(comparisonVerdict(interval, { threshold })).toBe('not-shown');
    expect(comparisonVerdict(interval, { threshold, equivalence })).toBe('no-difference-that-matters');
  });

  it('is mirrored where more is better, such as pieces an hour', () => {
    const mirror: Record<string, string> = {
      improved: 'worse',
      worse: 'improved',
      'improved-size-uncertain': 'worse-size-uncertain',
      'worse-size-uncertain': 'improved-size-uncertain',
    };
    const limit = fc.integer({ min: -100, max: 100 });
    fc.assert(
      fc.property(limit, limit, fc.integer({ min: 1, max: 60 }), (a, b, size) => {
        const interval = { lower: Math.min(a, b), upper: Math.max(a, b) };
        const less = comparisonVerdict(interval, { threshold: size });
        const more = comparisonVerdict(interval, { threshold: size, better: 'higher' });
        expect(more).toBe(mirror[less] ?? less);
      }),
    );
  });

  it('never calls a change worse while the interval reaches below zero, nor better while it reaches above', () => {
    const limit = fc.integer({ min: -100, max: 100 });
    fc.assert(
      fc.property(limit, limit, (a, b) => {
        const interval = { lower: Math.min(a, b), upper: Math.max(a, b) };
        const verdict = comparisonVerdict(interval, { threshold: 10 });
        if (interval.lower < 0) expect(verdict.startsWith('worse')).toBe(false);
        if (interval.upper > 0) expect(verdict.startsWith('improved')).toBe(false);
      }),
    );
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses the threshold %s', (bad) => {
    expect(() => comparisonVerdict({ lower: 0, upper: 1 }, { threshold: bad })).toThrow(
      'comparisonVerdict requires a threshold above zero',
    );
  });

  it.each([
    { lower: 1, upper: 0 },
    { lower: Number.NaN, upper: 1 },
    { lower: 0, upper: Number.POSITIVE_INFINITY },
    { lower: -1e308, upper: 1 },
  ])('refuses the interval %o', (interval) => {
    expect(() => comparisonVerdict(interval, { threshold })).toThrow(saysRule('comparisonVerdict'));
    expect(() => comparisonVerdict({ lower: 0, upper: 1 }, { threshold, equivalence: interval })).toThrow(
      RangeError,
    );
  });
});
