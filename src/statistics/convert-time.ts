import { requireNumber } from './require-number';

/** Units of time in the trade: centiminute is 0.01 min, decimalHour is 0.0001 h, tmu is the time measurement unit. */
export type TimeUnit = 'ms' | 's' | 'min' | 'h' | 'centiminute' | 'decimalHour' | 'tmu';

/** Each unit in hundredths of a millisecond: whole numbers, so that conversion rounds once and no more. */
const SIZE: Readonly<Record<TimeUnit, number>> = {
  ms: 100,
  s: 100_000,
  min: 6_000_000,
  h: 360_000_000,
  centiminute: 60_000,
  decimalHour: 36_000,
  tmu: 3600,
};

/**
 * Converted time.
 *
 * Formula: 1 TMU = 0.00001 h = 0.0006 min = 0.036 s; 1 centiminute = 0.01 min = 0.6 s; 1 decimal hour division
 *   = 0.0001 h = 0.36 s
 * Source: International MTM Directorate, definition of the TMU (Maynard, Stegemerten & Schwab, Methods-Time
 *   Measurement, 1948, from memory); International Labour Office, Introduction to Work Study, on watches.
 *
 * @throws {RangeError} convertTime requires a finite time
 * @throws {RangeError} convertTime requires units of ms, s, min, h, centiminute, decimalHour or tmu
 * @example
 * convertTime(86.4, 'tmu', 's') // => 3.1104
 */
export function convertTime(time: number, from: TimeUnit, to: TimeUnit): number {
  requireNumber('convertTime', 'a finite time', time, true);
  if (!Object.hasOwn(SIZE, from) || !Object.hasOwn(SIZE, to)) {
    throw new RangeError('convertTime requires units of ms, s, min, h, centiminute, decimalHour or tmu');
  }
  const converted = (time * SIZE[from]) / SIZE[to];
  requireNumber('convertTime', 'a time within the range of a number', converted, true);
  return converted;
}
