import { controlChartConstants } from './control-chart-constants';
import { observedMean } from './observed-mean';
import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';
import type { RequiredReadings } from './required-readings';
import { wholeReadings } from './whole-readings';

/**
 * Required readings, mean-range method: the bench method that needs no deviation, for 95 % as the trade rounds it
 * (two deviations).
 *
 * Formula: raw = ((2/k)·(R/x̄)/d₂)², readings = raw rounded up (whole-readings.ts)
 *   R  largest less smallest reading and x̄  mean, one unit; d₂  mean range of n normal values of deviation 1;
 *   k  precision, a share of the mean: 2/k is 40 at ±5 %
 *   With 5 and 10 readings this gives the printed table to within 2 readings; any count from 2 to 50 will do.
 * Source: Barnes, Motion and Time Study, 7th edition, table of readings for ±5 % and 95 % (from memory); the
 *   formula behind it is ours to see.
 *
 * @throws {RangeError} requiredReadingsMeanRange requires at least two readings
 * @throws {RangeError} requiredReadingsMeanRange requires finite readings no larger than 1e150 in size
 * @throws {RangeError} requiredReadingsMeanRange requires at most 50 readings
 * @throws {RangeError} requiredReadingsMeanRange requires a precision above 0
 * @throws {RangeError} requiredReadingsMeanRange requires readings with a mean above 0
 * @throws {RangeError} requiredReadingsMeanRange requires a range below a million times the precision asked
 * @example
 * requiredReadingsMeanRange([0.9, 1, 1, 1, 1.1], 0.05).readings // => 12
 */
export function requiredReadingsMeanRange(readings: readonly number[], precision: number): RequiredReadings {
  const name = 'requiredReadingsMeanRange';
  requireReadings(name, readings, 2);
  requireNumber(name, 'at most 50 readings', readings.length, readings.length <= 50);
  requireNumber(name, 'a precision above 0', precision, precision > 0);
  const mean = observedMean(readings);
  requireNumber(name, 'readings with a mean above 0', mean, mean > 0);
  const range = Math.max(...readings) - Math.min(...readings);
  const spread = range / (precision * mean);
  requireNumber(name, 'a range below a million times the precision asked', spread, spread < 1e6);
  const raw = ((2 * spread) / controlChartConstants(readings.length).d2) ** 2;
  return { raw, readings: wholeReadings(raw) };
}
