import type { ClusterTotal } from './clustered-bootstrap';

/**
 * Resampled means: the mean of a sample drawn with replacement, many times over.
 *
 * Formula: for each resample draw as many clusters as there are, with replacement; mean = Σtotal/Σcount
 *   total, count  of each cluster drawn; a single reading is a cluster of count 1
 * Source: B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap, 1993, algorithm 6.1.
 *
 * @param random numbers from 0 up to 1, such as seededRandom(seed)
 * @throws {RangeError} resampledMeans requires clusters: at least one
 * @throws {RangeError} resampledMeans requires random numbers from 0 up to but not including 1
 * @example
 * resampledMeans([{ total: 6, count: 3 }], 2, () => 0.5) // => [2, 2]
 */
export function resampledMeans(
  clusters: readonly ClusterTotal[],
  resamples: number,
  random: () => number,
): number[] {
  if (clusters.length === 0) throw new RangeError('resampledMeans requires clusters: at least one');
  const size = clusters.length;
  const means: number[] = [];
  for (let b = 0; b < resamples; b += 1) {
    let total = 0;
    let count = 0;
    for (let i = 0; i < size; i += 1) {
      const drawn = clusters[Math.floor(random() * size)];
      if (!drawn) {
        throw new RangeError('resampledMeans requires random numbers from 0 up to but not including 1');
      }
      total += drawn.total;
      count += drawn.count;
    }
    means.push(total / count);
  }
  return means;
}
