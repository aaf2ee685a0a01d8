import { requireReadings } from './require-readings';

/**
 * Element times from continuous timing: differences of the running watch at successive break points.
 *
 * Formula: OTⱼ = Wⱼ − Wⱼ₋₁, W₀ = the reading the watch started from
 *   W  watch readings, any one unit that rises; answer in that unit
 * Source: Niebel & Freivalds, Methods, Standards, and Work Design (from memory).
 *
 * @throws {RangeError} elementTimes requires at least one reading
 * @throws {RangeError} elementTimes requires finite readings no larger than 1e150 in size
 * @throws {RangeError} elementTimes requires watch readings that never fall
 * @example
 * elementTimes([22, 51, 72]) // => [22, 29, 21]
 */
export function elementTimes(watchReadings: readonly number[], startedFrom = 0): number[] {
  requireReadings('elementTimes', watchReadings, 1);
  requireReadings('elementTimes', [startedFrom], 1);
  return watchReadings.map((reading, i) => {
    const before = i === 0 ? startedFrom : watchReadings[i - 1]!;
    if (reading < before) throw new RangeError('elementTimes requires watch readings that never fall');
    return reading - before;
  });
}
