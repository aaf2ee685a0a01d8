import { compensatedSum } from './compensated-sum';

/**
 * Sum of squared deviations from the mean, by the corrected two-pass algorithm.
 *
 * Formula: S = Σ(x − m)² − (Σ(x − m))²/n, with m the computed mean
 *   The second term is zero in exact arithmetic; in doubles it takes back what the rounding of m put in.
 *   x  reading, any one unit; S in that unit squared; n a count
 * Source: Chan, Golub & LeVeque, The American Statistician 37 (1983), pp. 242–247, equation 1.7.
 *   Chosen over a running (Welford) pass because it keeps more digits and needs no division per reading.
 *
 * Callers check their input.
 *
 * @example
 * sumOfSquaredDeviations([1, 2, 3, 4]) // => 5
 */
export function sumOfSquaredDeviations(readings: readonly number[]): number {
  const n = readings.length;
  const mean = compensatedSum(readings) / n;
  let squares = 0;
  let lost = 0;
  let residue = 0;
  for (let i = 0; i < n; i += 1) {
    const deviation = readings[i]! - mean;
    const square = deviation * deviation;
    // As in compensated-sum.ts: a thousand equal squares would otherwise round the same way a thousand times.
    const next = squares + square;
    const part = next - squares;
    lost += squares - (next - part) + (square - part);
    squares = next;
    residue += deviation;
  }
  // The mean of equal readings may round to a neighbour of them; what is left is dust, on either side of zero.
  return Math.max(0, squares + lost - (residue * residue) / n);
}
