import { observedMean } from './observed-mean';
import { requireNumber } from './require-number';

/** A benchmark element: its predetermined time and the mean of its readings, in one unit. */
export interface BenchmarkElement {
  readonly predetermined: number;
  readonly observed: number;
}

/**
 * Synthetic rating: pace taken from elements whose standard pace is known, and applied to all manual elements.
 *
 * Formula: Rᵢ = predeterminedᵢ/observedᵢ; factor = mean of the Rᵢ
 *   times in one unit; R and factor pure numbers, 1 at standard pace. Machine elements keep 1.
 * Source: Morrow's method as told in Niebel & Freivalds, Methods, Standards, and Work Design (from memory).
 *
 * @throws {RangeError} syntheticRating requires at least one benchmark element
 * @throws {RangeError} syntheticRating requires times above 0
 * @throws {RangeError} syntheticRating requires times whose ratio is at most 1e150
 * @example
 * syntheticRating([{ predetermined: 0.096, observed: 0.08 }]).factor // => 1.2
 */
export function syntheticRating(elements: readonly BenchmarkElement[]): {
  readonly factors: readonly number[];
  readonly factor: number;
} {
  if (elements.length === 0) {
    throw new RangeError('syntheticRating requires at least one benchmark element');
  }
  const factors = elements.map(({ predetermined, observed }) => {
    requireNumber('syntheticRating', 'times above 0', predetermined, predetermined > 0);
    requireNumber('syntheticRating', 'times above 0', observed, observed > 0);
    const factor = predetermined / observed;
    requireNumber('syntheticRating', 'times whose ratio is at most 1e150', factor, factor <= 1e150);
    return factor;
  });
  return { factors, factor: observedMean(factors) };
}
