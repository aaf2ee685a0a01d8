import { describe, expect, it } from 'vitest';
import { sampleSummary } from '../../src/statistics/sample-summary';
import { badReadings, saysRule } from './bad-readings';

describe('sampleSummary', () => {
  it('counts, averages and spreads readings, dividing by one fewer than their number', () => {
    // By hand: mean 5, squares 9 1 1 1 0 0 4 16, sum 32, 32/7.
    const summary = sampleSummary('x', [2, 4, 4, 4, 5, 5, 7, 9]);
    expect(summary.count).toBe(8);
    expect(summary.mean).toBe(5);
    expect(summary.deviation).toBeCloseTo(Math.sqrt(32 / 7), 14);
  });

  it('passes a summary from a book through as it is', () => {
    const printed = { count: 25, mean: 0.3, deviation: 0.09 };
    expect(sampleSummary('x', printed)).toBe(printed);
  });

  it.each([...badReadings, ['one alone', [1]] as const])('refuses readings with %s', (_, readings) => {
    expect(() => sampleSummary('welchComparison', readings)).toThrow(saysRule('welchComparison'));
  });

  it.each([
    { count: 1, mean: 1, deviation: 1 },
    { count: 2.5, mean: 1, deviation: 1 },
    { count: 5, mean: 1, deviation: -1 },
    { count: 5, mean: Number.NaN, deviation: 1 },
    { count: 5, mean: 1, deviation: 1e308 },
    { count: Number.POSITIVE_INFINITY, mean: 1, deviation: 1 },
  ])('refuses the summary %o', (summary) => {
    expect(() => sampleSummary('pooledComparison', summary)).toThrow(saysRule('pooledComparison'));
  });
});
