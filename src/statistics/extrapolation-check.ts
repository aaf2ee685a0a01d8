import { requireNumber } from './require-number';
import { requireReadings } from './require-readings';

export type ExtrapolationCheck = {
  readonly standing: 'inside' | 'just-outside' | 'outside';
  readonly side: 'below' | 'within' | 'above';
  /** How far outside, as a share of the studied range; 0 inside. */
  readonly distance: number;
};

/**
 * Extrapolation check: does a new size lie where the study has readings?
 *
 * Formula: distance = (x₀ − greatest)/(greatest − smallest) above the range, likewise below it;
 *          'outside' when the distance is more than the tolerance, else 'just-outside' beyond the range
 *   x₀         driver of the new size, in the unit of the study
 *   tolerance  share of the studied range, 0.10 by default
 * Source: ordinary practice (a fitted line holds where it was fitted); the 10 % is this project's rule.
 *
 * @throws {RangeError} extrapolationCheck requires at least two readings, and finite ones that differ
 * @throws {RangeError} extrapolationCheck requires a finite size
 * @throws {RangeError} extrapolationCheck requires a tolerance of zero or more
 * @example
 * extrapolationCheck([2, 4, 6], 7).distance // => 0.25
 */
export function extrapolationCheck(
  studied: readonly number[],
  size: number,
  tolerance = 0.1,
): ExtrapolationCheck {
  requireReadings('extrapolationCheck', studied, 2);
  requireNumber('extrapolationCheck', 'a finite size', size, true);
  requireNumber('extrapolationCheck', 'a tolerance of zero or more', tolerance, tolerance >= 0);
  const smallest = studied.reduce((least, x) => Math.min(least, x));
  const greatest = studied.reduce((most, x) => Math.max(most, x));
  const range = greatest - smallest;
  requireNumber('extrapolationCheck', 'studied sizes that differ', range, range > 0);
  if (size >= smallest && size <= greatest) return { standing: 'inside', side: 'within', distance: 0 };
  const side = size < smallest ? 'below' : 'above';
  const distance = (side === 'below' ? smallest - size : size - greatest) / range;
  requireNumber('extrapolationCheck', 'a size within 1e150 ranges of the study', distance, distance < 1e150);
  return { standing: distance > tolerance ? 'outside' : 'just-outside', side, distance };
}
