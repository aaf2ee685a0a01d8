import { quantile } from './quantile';
import { requireConfidence } from './require-confidence';
import { requireReadings } from './require-readings';
import { resampledMeans } from './resampled-means';
import { sampleStandardDeviation } from './sample-standard-deviation';

export type ClusterTotal = {
  /** Sum over the cluster, for instance the day's minutes. */
  readonly total: number;
  /** What the sum is spread over, for instance the day's good parts. */
  readonly count: number;
};

export type ClusteredBootstrap = {
  readonly estimate: number;
  readonly standardError: number;
  readonly lower: number;
  readonly upper: number;
  /** Clusters resampled before and after: the number that the interval really rests on. */
  readonly clusters: readonly [number, number];
};

/**
 * Clustered bootstrap: before against after, by drawing whole days (or operator-days) again and again,
 * because readings of one day share its material, its crew and its trouble.
 *
 * Formula: estimate = after − before ('difference') or after ÷ before ('ratio'), each Σtotal/Σcount;
 *          interval from the (1 − c)/2 and (1 + c)/2 quantiles of the resampled estimates
 *   total, count  of a cluster; the mean is a ratio of sums, so a long day weighs more
 *   c             confidence, 0.95 by default
 * With fewer than about ten clusters a side the interval is somewhat too short: print their number.
 * Source: B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap, 1993, sections 8.3 and 13.3;
 * A. C. Davison and D. V. Hinkley, Bootstrap Methods and Their Application, 1997, section 3.8.
 *
 * @param random numbers between 0 and 1, such as seededRandom(seed): the same seed, the same interval
 * @throws {RangeError} clusteredBootstrap requires at least two clusters before and after
 * @throws {RangeError} clusteredBootstrap requires counts above zero
 * @throws {RangeError} clusteredBootstrap requires a total before above zero for a ratio
 * @throws {RangeError} clusteredBootstrap requires a whole number of resamples from 100 to 1000000
 * @example
 * clusteredBootstrap([{ total: 6, count: 3 }, { total: 6, count: 3 }], [{ total: 3, count: 3 }, { total: 3, count: 3 }], { random: () => 0.5 }).estimate // => -1
 */
export function clusteredBootstrap(
  before: readonly ClusterTotal[],
  after: readonly ClusterTotal[],
  options: {
    readonly random: () => number;
    readonly statistic?: 'difference' | 'ratio';
    readonly resamples?: number;
    readonly confidence?: number;
  },
): ClusteredBootstrap {
  const { random, statistic = 'difference', resamples = 2000, confidence = 0.95 } = options;
  checkClusters(before);
  checkClusters(after);
  requireConfidence('clusteredBootstrap', confidence);
  if (!Number.isInteger(resamples) || resamples < 100 || resamples > 1e6) {
    throw new RangeError('clusteredBootstrap requires a whole number of resamples from 100 to 1000000');
  }
  if (statistic === 'ratio' && before.some(({ total }) => !(total > 0))) {
    throw new RangeError('clusteredBootstrap requires a total before above zero for a ratio');
  }
  const compare = (old: number, now: number) => (statistic === 'ratio' ? now / old : now - old);
  const oldMeans = resampledMeans(before, resamples, random);
  const newMeans = resampledMeans(after, resamples, random);
  const estimates = oldMeans.map((old, i) => compare(old, newMeans[i]!));
  return {
    estimate: compare(overallMean(before), overallMean(after)),
    standardError: sampleStandardDeviation(estimates),
    lower: quantile(estimates, (1 - confidence) / 2),
    upper: quantile(estimates, (1 + confidence) / 2),
    clusters: [before.length, after.length],
  };
}

function checkClusters(clusters: readonly ClusterTotal[]): void {
  if (clusters.length < 2) {
    throw new RangeError('clusteredBootstrap requires at least two clusters before and after');
  }
  for (const { total, count } of clusters) {
    requireReadings('clusteredBootstrap', [total, count], 2);
    if (!(count > 0)) throw new RangeError('clusteredBootstrap requires counts above zero');
  }
}

function overallMean(clusters: readonly ClusterTotal[]): number {
  let total = 0;
  let count = 0;
  for (const cluster of clusters) {
    total += cluster.total;
    count += cluster.count;
  }
  return total / count;
}
