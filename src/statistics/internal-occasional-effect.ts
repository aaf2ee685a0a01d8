import { requireNumber } from './require-number';
import { requireTimes } from './require-times';

/** Times of one cycle, in one unit, and how often the occasional work comes up inside it. */
export interface InternalOccasionalWork {
  readonly internal: number;
  readonly occasional: number;
  readonly machine: number;
  /** Occurrences for each work unit. */
  readonly perUnit: number;
}

/**
 * Effect of an occasional element done while the machine runs: it lengthens the cycle only past the slack.
 *
 * Formula: f·(max(internal + occasional, machine) − max(internal, machine))
 *   times in one unit, the answer in it for each work unit; f  occurrences for each work unit
 *   Counting the element as external, f·occasional, is the cautious default; the difference is worth showing.
 * Source: algebra on the cycle max(internal, machine).
 *
 * @throws {RangeError} internalOccasionalEffect requires times from 0 to 1e150
 * @throws {RangeError} internalOccasionalEffect requires a frequency from 0 to 1e150
 * @example
 * internalOccasionalEffect({ internal: 1, occasional: 0.75, machine: 1.25, perUnit: 0.5 }) // => 0.25
 */
export function internalOccasionalEffect(work: InternalOccasionalWork): number {
  const { internal, occasional, machine, perUnit } = work;
  requireTimes('internalOccasionalEffect', [internal, occasional, machine]);
  const isFrequency = perUnit >= 0 && perUnit <= 1e150;
  requireNumber('internalOccasionalEffect', 'a frequency from 0 to 1e150', perUnit, isFrequency);
  return perUnit * (Math.max(internal + occasional, machine) - Math.max(internal, machine));
}
