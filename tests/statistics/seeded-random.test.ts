import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/statistics/seeded-random';
import { saysRule } from './bad-readings';

function draws(seed: number, count: number): number[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, random);
}

describe('seededRandom', () => {
  it('reaches 1043618065 after 10,000 steps from seed 1, the check of Park and Miller 1988', () => {
    expect(Math.round(draws(1, 10_000).at(-1)! * 2147483647)).toBe(1043618065);
  });

  it('gives the same numbers for the same seed, whoever else draws', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2147483646 }), (seed) => {
        const alone = draws(seed, 20);
        const other = seededRandom(seed + 1 > 2147483646 ? 1 : seed + 1);
        const random = seededRandom(seed);
        const shared = Array.from({ length: 20 }, () => {
          other();
          return random();
        });
        expect(shared).toEqual(alone);
      }),
    );
  });

  it('stays strictly between 0 and 1, so it always picks one of a list', () => {
    for (const seed of [1, 2147483646, 16807]) {
      for (const number of draws(seed, 5000)) {
        expect(number).toBeGreaterThan(0);
        expect(number).toBeLessThan(1);
      }
    }
  });

  it.each([0, -1, 1.5, 2147483647, Number.NaN, Number.POSITIVE_INFINITY])('refuses the seed %s', (seed) => {
    expect(() => seededRandom(seed)).toThrow(saysRule('seededRandom'));
    expect(() => seededRandom(seed)).toThrow(RangeError);
  });
});
