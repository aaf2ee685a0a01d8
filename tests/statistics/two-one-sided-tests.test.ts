import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoOneSidedTests } from '../../src/statistics/two-one-sided-tests';
import { badReadings, saysRule } from './bad-readings';

const summary = fc.record({
  count: fc.integer({ min: 2, max: 200 }),
  mean: fc.integer({ min: -50, max: 50 }),
  deviation: fc.integer({ min: 1, max: 20 }),
});

describe('twoOneSidedTests', () => {
  it('calls equivalent exactly when the larger probability is below the significance', () => {
    fc.assert(
      fc.property(summary, summary, fc.integer({ min: 1, max: 60 }), (a, b, margin) => {
        const { equivalent, probability } = twoOneSidedTests(a, b, { margin });
        // Two roads to one decision; a knife's edge may fall either way.
        if (Math.abs(probability - 0.05) > 1e-9) expect(equivalent).toBe(probability < 0.05);
      }),
    );
  });

  it('answers alike when the two samples change places', () => {
    fc.assert(
      fc.property(summary, summary, (a, b) => {
        const forward = twoOneSidedTests(a, b, { margin: 10 });
        const backward = twoOneSidedTests(b, a, { margin: 10 });
        expect(backward.probability).toBeCloseTo(forward.probability, 12);
        expect(backward.equivalent).toBe(forward.equivalent);
      }),
    );
  });

  it('does not call a difference equivalent because little is known about it', () => {
    // Three readings a side: no difference is shown, and none is ruled out.
    expect(twoOneSidedTests([4, 5, 6], [4, 5, 6.1], { margin: 0.5 }).equivalent).toBe(false);
    expect(twoOneSidedTests([4, 5, 6], [4, 5, 6.1], { margin: 5 }).equivalent).toBe(true);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses the margin %s', (margin) => {
    expect(() => twoOneSidedTests([1, 2], [2, 3], { margin })).toThrow(
      'twoOneSidedTests requires a margin above zero',
    );
  });

  it.each([0, 0.5, 0.7, -0.1, Number.NaN])('refuses the significance %s', (significance) => {
    expect(() => twoOneSidedTests([1, 2], [2, 3], { margin: 1, significance })).toThrow(
      saysRule('twoOneSidedTests'),
    );
  });

  it.each([...badReadings, ['one alone', [1]] as const])('refuses readings with %s', (_, x) => {
    expect(() => twoOneSidedTests(x, [1, 2], { margin: 1 })).toThrow(saysRule('twoOneSidedTests'));
    expect(() => twoOneSidedTests([1, 2], x, { margin: 1 })).toThrow(saysRule('twoOneSidedTests'));
  });

  it('refuses readings without any spread', () => {
    expect(() => twoOneSidedTests([2, 2], [3, 3], { margin: 1 })).toThrow(saysRule('twoOneSidedTests'));
  });
});
