import { observedMean } from './observed-mean';
import { requireReadings } from './require-readings';

/**
 * Lag-one autocorrelation: how far each reading resembles the one before it.
 *
 * Formula: r₁ = Σ(xᵢ − x̄)(xᵢ₊₁ − x̄) / Σ(xᵢ − x̄)²
 *   x  readings in the order they were taken, any one unit; r₁ a pure number, −1 to 1
 *   Take it inside one operator's run: over several runs the differences between them would inflate it.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12.
 *
 * @throws {RangeError} lagOneAutocorrelation requires at least two readings
 * @throws {RangeError} lagOneAutocorrelation requires finite readings no larger than 1e150 in size
 * @throws {RangeError} lagOneAutocorrelation requires readings that are not all equal
 * @throws {RangeError} lagOneAutocorrelation requires readings whose squared deviations are not lost to rounding
 * @example
 * lagOneAutocorrelation([1, 2, 3, 4, 5]) // => 0.4
 */
export function lagOneAutocorrelation(readings: readonly number[]): number {
  requireReadings('lagOneAutocorrelation', readings, 2);
  // Asked first: the mean of equal readings may round to a neighbour of them, and leave deviations of dust.
  if (readings.every((reading) => reading === readings[0])) {
    throw new RangeError('lagOneAutocorrelation requires readings that are not all equal');
  }
  const mean = observedMean(readings);
  const n = readings.length;
  let products = 0;
  let squares = 0;
  let before = 0;
  for (let i = 0; i < n; i += 1) {
    const deviation = readings[i]! - mean;
    products += before * deviation;
    squares += deviation * deviation;
    before = deviation;
  }
  if (squares === 0) {
    throw new RangeError(
      'lagOneAutocorrelation requires readings whose squared deviations are not lost to rounding',
    );
  }
  return products / squares;
}
