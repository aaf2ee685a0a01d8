import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';
import { studentQuantile } from './student-quantile';

/** All figures of a list of readings that need no sorting; times in the unit of the readings. */
export interface ReadingsSummary {
  readonly n: number;
  readonly mean: number;
  readonly standardDeviation: number;
  readonly coefficientOfVariation: number;
  readonly smallest: number;
  readonly largest: number;
  /** Lag-one autocorrelation in the order given; 0 when all readings are equal. */
  readonly autocorrelation: number;
  readonly halfWidth: number;
  readonly relativeHalfWidth: number;
}

/**
 * Summary of readings in two passes, for lists so long that a pass for each figure would be felt.
 *
 * Formula: as in observed-mean.ts, sample-standard-deviation.ts, coefficient-of-variation.ts,
 *   lag-one-autocorrelation.ts and mean-interval.ts, whose answers it gives to the last digits
 *   confidence a share. The second pass takes deviations from the mean of the first and corrects both the
 *   mean and the sum of squares by what the deviations add up to. Measured: 2 to 3 times one pass that adds.
 * Source: Chan, Golub & LeVeque, The American Statistician 37 (1983), pp. 242–247.
 *
 * @throws {RangeError} readingsSummary requires at least two readings
 * @throws {RangeError} readingsSummary requires finite readings no larger than 1e150 in size
 * @throws {RangeError} readingsSummary requires a confidence above 0 and below 1
 * @throws {RangeError} readingsSummary requires readings with a mean above 0
 * @example
 * readingsSummary([4, 5, 6], 0.95).coefficientOfVariation // => 0.2
 */
export function readingsSummary(readings: readonly number[], confidence: number): ReadingsSummary {
  const name = 'readingsSummary';
  const n = readings.length;
  if (n < 2) requireReadings(name, readings, 2);
  requireConfidence(name, confidence);
  const { sum, smallest, largest } = sumAndExtremes(readings);
  // A NaN or an Infinity anywhere is in the sum; the search for it is left to the check that names the rule.
  if (!(Number.isFinite(sum) && smallest >= -1e150 && largest <= 1e150)) requireReadings(name, readings, 2);
  const roughMean = sum / n;
  const { residue, squares, products } = deviations(readings, roughMean);
  const mean = roughMean + residue / n;
  requireNumber(name, 'readings with a mean above 0', mean, mean > 0);
  const corrected = smallest === largest ? 0 : Math.max(0, squares - (residue * residue) / n);
  const standardDeviation = Math.sqrt(corrected / (n - 1));
  const halfWidth = (studentQuantile((1 + confidence) / 2, n - 1) * standardDeviation) / Math.sqrt(n);
  return {
    n,
    mean,
    standardDeviation,
    coefficientOfVariation: standardDeviation / mean,
    smallest,
    largest,
    autocorrelation: corrected === 0 ? 0 : products / corrected,
    halfWidth,
    relativeHalfWidth: halfWidth / mean,
  };
}

/** Two sums beside each other, since a single one waits for itself at every reading. */
function sumAndExtremes(readings: readonly number[]) {
  const n = readings.length;
  let even = 0;
  let odd = 0;
  let smallest = readings[0]!;
  let largest = smallest;
  let i = 0;
  for (; i + 1 < n; i += 2) {
    const x = readings[i]!;
    const y = readings[i + 1]!;
    even += x;
    odd += y;
    if (x < smallest) smallest = x;
    if (x > largest) largest = x;
    if (y < smallest) smallest = y;
    if (y > largest) largest = y;
  }
  if (i < n) {
    const last = readings[i]!;
    even += last;
    if (last < smallest) smallest = last;
    if (last > largest) largest = last;
  }
  return { sum: even + odd, smallest, largest };
}

function deviations(readings: readonly number[], mean: number) {
  // Asked for once: asking at every turn doubles the time of this loop.
  const n = readings.length;
  let residue = 0;
  let squares = 0;
  let products = 0;
  let before = 0;
  for (let i = 0; i < n; i += 1) {
    const deviation = readings[i]! - mean;
    residue += deviation;
    squares += deviation * deviation;
    products += before * deviation;
    before = deviation;
  }
  return { residue, squares, products };
}
