import { compensatedSum } from './compensated-sum';
import { requireNumber } from './require-number';

/**
 * Standard-data time: what a standard-data formula gives for the drivers of one job.
 *
 * Formula: time = a + Σbⱼxⱼ
 *   a   constant, in the unit of time
 *   bⱼ  time per unit of driver j
 *   xⱼ  driver j, for instance pieces, length, edges
 * Source: the general form of a synthetic time; a jointing formula of that form, 0.131·N + 0.003·L +
 * 0.005·l + 0.017·E minutes, is printed in an early text on scientific management (pp. 205–207).
 *
 * @throws {RangeError} standardDataTime requires a finite constant
 * @throws {RangeError} standardDataTime requires one finite driver a coefficient
 * @example
 * standardDataTime(0, [0.131, 0.003, 0.005, 0.017], [4, 96, 24, 8]).toFixed(3) // => '1.068'
 */
export function standardDataTime(
  constant: number,
  coefficients: readonly number[],
  drivers: readonly number[],
): number {
  requireNumber('standardDataTime', 'a finite constant', constant, true);
  const rule = 'one finite driver a coefficient';
  requireNumber('standardDataTime', rule, drivers.length, drivers.length === coefficients.length);
  const parts = coefficients.map((coefficient, j) => coefficient * drivers[j]!);
  const time = compensatedSum([constant, ...parts]);
  requireNumber('standardDataTime', rule, time, true);
  return time;
}
