import { requireReadings } from './require-readings';
import { type RunningStatistics, runningStatistics } from './running-statistics';

/**
 * Running statistics without one of the readings that are in: the way back of add-reading.ts, for an undone or an
 * excluded reading.
 *
 * Formula: x̄ₙ₋₁ = x̄ₙ − (x − x̄ₙ)/(n − 1), Sₙ₋₁ = Sₙ − (x − x̄ₙ₋₁)(x − x̄ₙ)
 *   x  a reading that was added, in the unit of the others; S  sum of squared deviations, unit squared
 *   Only the caller knows that it was added; a reading that never was gives a wrong answer, not an error.
 * Source: Welford, Technometrics 4 (1962), pp. 419–420, solved for the earlier state.
 *
 * @throws {RangeError} removeReading requires finite readings no larger than 1e150 in size
 * @throws {RangeError} removeReading requires running statistics that hold a reading
 * @example
 * removeReading({ n: 2, mean: 5, squares: 2 }, 6) // => { n: 1, mean: 4, squares: 0 }
 */
export function removeReading(soFar: RunningStatistics, reading: number): RunningStatistics {
  requireReadings('removeReading', [reading], 1);
  if (soFar.n < 1) throw new RangeError('removeReading requires running statistics that hold a reading');
  if (soFar.n === 1) return runningStatistics;
  const n = soFar.n - 1;
  const after = reading - soFar.mean;
  const mean = soFar.mean - after / n;
  // Rounding may leave a hair below zero; one reading has no spread at all.
  const squares = n === 1 ? 0 : Math.max(0, soFar.squares - (reading - mean) * after);
  return { n, mean, squares };
}
