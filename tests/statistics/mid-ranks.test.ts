import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midRanks } from '../../src/statistics/mid-ranks';
import { badReadings, saysRule } from './bad-readings';

describe('midRanks', () => {
  it('gives equal values the mean of their places', () => {
    expect(midRanks([30, 10, 30, 20, 30])).toEqual([4, 1, 4, 2, 4]);
    expect(midRanks([5, 5, 5])).toEqual([2, 2, 2]);
    expect(midRanks([8])).toEqual([1]);
  });

  it('adds up to n(n + 1)/2 whatever is equal', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 1, maxLength: 60 }), (values) => {
        const sum = midRanks(values).reduce((total, rank) => total + rank, 0);
        expect(sum).toBe((values.length * (values.length + 1)) / 2);
      }),
    );
  });

  it.each(badReadings)('refuses values with %s', (_, values) => {
    expect(() => midRanks(values)).toThrow(saysRule('midRanks'));
  });
});
