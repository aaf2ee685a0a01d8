import { describe, expect, it } from 'vitest';
import { resampledMeans } from '../../src/statistics/resampled-means';
import { seededRandom } from '../../src/statistics/seeded-random';
import { saysRule } from './bad-readings';

const clusters = [
  { total: 10, count: 5 },
  { total: 12, count: 3 },
];

describe('resampledMeans', () => {
  it('draws whole clusters and divides sum by sum', () => {
    // 0.1 picks the first of two, 0.9 the second: first twice, then one of each.
    const draws = [0.1, 0.1, 0.1, 0.9];
    expect(resampledMeans(clusters, 2, () => draws.shift()!)).toEqual([2, 22 / 8]);
  });

  it('reaches every cluster and no place outside the list', () => {
    const singles = [0, 1, 2, 3].map((total) => ({ total, count: 1 }));
    const seen = new Set<number>();
    const random = seededRandom(7);
    for (let i = 0; i < 200; i += 1) {
      for (const mean of resampledMeans([singles[i % 4]!], 1, random)) seen.add(mean);
    }
    expect([...seen].sort()).toEqual([0, 1, 2, 3]);
    expect(resampledMeans(singles, 500, random).every((mean) => mean >= 0 && mean <= 3)).toBe(true);
  });

  it('refuses no cluster, and a generator that leaves 0 to 1', () => {
    expect(() => resampledMeans([], 5, () => 0.5)).toThrow(saysRule('resampledMeans'));
    expect(() => resampledMeans(clusters, 5, () => 1)).toThrow(saysRule('resampledMeans'));
    expect(() => resampledMeans(clusters, 5, () => -0.1)).toThrow(saysRule('resampledMeans'));
    expect(() => resampledMeans(clusters, 5, () => Number.NaN)).toThrow(RangeError);
  });
});
