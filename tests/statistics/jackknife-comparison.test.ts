import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clusteredBootstrap } from '../../src/statistics/clustered-bootstrap';
import { jackknifeComparison } from '../../src/statistics/jackknife-comparison';
import { observedMean } from '../../src/statistics/observed-mean';
import { seededRandom } from '../../src/statistics/seeded-random';
import { welchComparison } from '../../src/statistics/welch-comparison';

describe('the comparison that leaves out one cluster at a time', () => {
  it('gives the published Welch comparison of the sleep data: t −1.8608, ν 17.776, −3.3655 to 0.2055', () => {
    // R help page t.test, data set sleep (Student 1908).
    const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
    const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
    const { t, degreesOfFreedom, lower, upper } = jackknifeComparison(first, second, observedMean);
    expect(t).toBeCloseTo(-1.8608, 4);
    expect(degreesOfFreedom).toBeCloseTo(17.776, 3);
    expect([lower, upper].map((limit) => limit.toFixed(7))).toEqual(['-3.3654832', '0.2054832']);
  });

  it('is Welch’s comparison for any means of one value a cluster', () => {
    const sample = fc.uniqueArray(fc.integer({ min: 1, max: 9_999 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(sample, sample, (first, second) => {
        const jackknife = jackknifeComparison(first, second, observedMean);
        const welch = welchComparison(first, second);
        expect(jackknife.lower).toBeCloseTo(welch.lower, 6);
        expect(jackknife.upper).toBeCloseTo(welch.upper, 6);
      }),
      { numRuns: 100 },
    );
  });

  it('has the standard error that drawing whole days again and again has, of a ratio of sums', () => {
    const random = seededRandom(271_828);
    const days = (n: number, level: number) =>
      Array.from({ length: n }, () => {
        const count = 20 + Math.floor(30 * random());
        return { total: count * (level + random() / 3), count };
      });
    const [before, after] = [days(30, 2), days(30, 1)];
    const ratio = (clusters: readonly { total: number; count: number }[]) =>
      clusters.reduce((sum, { total }) => sum + total, 0) /
      clusters.reduce((sum, { count }) => sum + count, 0);
    const jackknife = jackknifeComparison(after, before, ratio);
    const bootstrap = clusteredBootstrap(before, after, { random, resamples: 4_000 });
    expect(jackknife.difference).toBeCloseTo(bootstrap.estimate, 12);
    expect(Math.abs(jackknife.standardError / bootstrap.standardError - 1)).toBeLessThan(0.08);
  });

  it('refuses one cluster, and clusters that do not differ', () => {
    expect(() => jackknifeComparison([1], [1, 2], observedMean)).toThrow(
      'jackknifeComparison requires at least two clusters in each group',
    );
    expect(() => jackknifeComparison([1, 1], [2, 2], observedMean)).toThrow(
      'jackknifeComparison requires readings that differ',
    );
  });
});
