import { requireReadings } from './require-readings';
import type { RunningStatistics } from './running-statistics';

/**
 * Running statistics with one reading more.
 *
 * Formula: x̄ₙ = x̄ₙ₋₁ + (x − x̄ₙ₋₁)/n, Sₙ = Sₙ₋₁ + (x − x̄ₙ₋₁)(x − x̄ₙ)
 *   x  reading, in the unit of the earlier ones; S  sum of squared deviations, unit squared
 * Source: Welford, Technometrics 4 (1962), pp. 419–420.
 *
 * @throws {RangeError} addReading requires finite readings no larger than 1e150 in size
 * @example
 * addReading({ n: 1, mean: 4, squares: 0 }, 6) // => { n: 2, mean: 5, squares: 2 }
 */
export function addReading(soFar: RunningStatistics, reading: number): RunningStatistics {
  requireReadings('addReading', [reading], 1);
  const n = soFar.n + 1;
  const before = reading - soFar.mean;
  const mean = soFar.mean + before / n;
  return { n, mean, squares: soFar.squares + before * (reading - mean) };
}
