import { observedMean } from './observed-mean';
import { populationStandardDeviation } from './population-standard-deviation';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';
import type { RequiredReadings } from './required-readings';
import { wholeReadings } from './whole-readings';

/**
 * Required readings, short form: the work-study office's formula for 95.45 % confidence.
 *
 * Formula: raw = ((2/k)·√(n′Σx² − (Σx)²)/Σx)², readings = raw rounded up (whole-readings.ts)
 *   x  pilot reading, any one unit; n′  their count; k  precision, a share of the mean: 2/k is the printed 40
 *   at ±5 % and 20 at ±10 %
 *   The root over Σx is the population deviation over the mean, and is computed as that: the sums of squares
 *   would cancel. z = 2, hence 95.45 %.
 * Source: International Labour Office (Kanawaty, ed.), Introduction to Work Study, 4th edition, 1992 (formula
 *   and answer 8.81 from memory).
 *
 * @throws {RangeError} requiredReadingsShortForm requires at least two readings
 * @throws {RangeError} requiredReadingsShortForm requires finite readings no larger than 1e150 in size
 * @throws {RangeError} requiredReadingsShortForm requires a precision above 0
 * @throws {RangeError} requiredReadingsShortForm requires readings with a mean above 0
 * @throws {RangeError} requiredReadingsShortForm requires a spread below a million times the precision asked
 * @example
 * requiredReadingsShortForm([7, 6, 7, 7, 6], 0.05).readings // => 9
 */
export function requiredReadingsShortForm(readings: readonly number[], precision: number): RequiredReadings {
  requireReadings('requiredReadingsShortForm', readings, 2);
  requireNumber('requiredReadingsShortForm', 'a precision above 0', precision, precision > 0);
  const mean = observedMean(readings);
  requireNumber('requiredReadingsShortForm', 'readings with a mean above 0', mean, mean > 0);
  const spread = populationStandardDeviation(readings) / (precision * mean);
  requireNumber(
    'requiredReadingsShortForm',
    'a spread below a million times the precision asked',
    spread,
    spread < 1e6,
  );
  const raw = (2 * spread) ** 2;
  return { raw, readings: wholeReadings(raw) };
}
