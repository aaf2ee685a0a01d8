import { requireNumber } from './require-number';

/**
 * Mean-range sample size: how many readings the mean-range method starts from.
 *
 * Rule: ten for a cycle of two minutes or less, five for a longer one
 *   cycle in minutes; answer a count
 * Source: Barnes, Motion and Time Study, 7th edition (from memory).
 *
 * @throws {RangeError} meanRangeSampleSize requires a cycle above 0 minutes
 * @example
 * meanRangeSampleSize(1.5) // => 10
 */
export function meanRangeSampleSize(cycleMinutes: number): 5 | 10 {
  requireNumber('meanRangeSampleSize', 'a cycle above 0 minutes', cycleMinutes, cycleMinutes > 0);
  return cycleMinutes <= 2 ? 10 : 5;
}
