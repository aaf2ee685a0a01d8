import { chiSquareQuantile } from './chi-square-quantile';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';

/**
 * Poisson interval of a rate, exact (Garwood): how often an occasional element, a stoppage or a defect
 * occurs, from a count of them.
 *
 * Formula: χ²(α/2; 2x)/(2N) to χ²(1 − α/2; 2x + 2)/(2N)
 *   x  occurrences counted
 *   N  what they were counted over: work units, hours …; the rate is per unit of it
 *   α  1 − confidence; with x = 0 the lower limit is 0
 * Source: F. Garwood, Biometrika 28, 1936, pp. 437–442.
 *
 * @throws {RangeError} poissonInterval requires a whole count from 0
 * @throws {RangeError} poissonInterval requires an exposure above zero
 * @throws {RangeError} poissonInterval requires a confidence above 0 and below 1
 * @example
 * poissonInterval(25, 1).lower.toFixed(2) // => '16.18'
 */
export function poissonInterval(
  count: number,
  exposure: number,
  confidence = 0.95,
): { readonly rate: number; readonly lower: number; readonly upper: number } {
  const isCount = Number.isInteger(count) && count >= 0 && count <= 1e9;
  requireNumber('poissonInterval', 'a whole count from 0', count, isCount);
  requireNumber('poissonInterval', 'an exposure above zero', exposure, exposure > 1e-150 && exposure < 1e150);
  requireConfidence('poissonInterval', confidence);
  const tail = (1 - confidence) / 2;
  return {
    rate: count / exposure,
    lower: count === 0 ? 0 : chiSquareQuantile(tail, 2 * count) / (2 * exposure),
    upper: chiSquareQuantile(1 - tail, 2 * count + 2) / (2 * exposure),
  };
}
