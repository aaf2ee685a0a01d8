import type { AllowanceBasis } from './allowance-factor';
import { requireNumber } from './require-number';

/**
 * Converted allowance: the same allowance said as a share of the other thing.
 *
 * Formula: A = A′/(1 − A′) from the shift to normal time, A′ = A/(1 + A) back
 *   A  share of the normal time, 0 or more; A′  share of the shift, 0 to below 1
 * Source: algebra on Stevenson, Operations Management, 14th edition, equations 7-7 and 7-8.
 *
 * @throws {RangeError} convertAllowance requires an allowance of 0 or more
 * @throws {RangeError} convertAllowance requires an allowance below the whole shift
 * @throws {RangeError} convertAllowance requires bases of normal_time or shift
 * @example
 * convertAllowance(0.15, 'shift', 'normal_time') // => 0.17647058823529413
 */
export function convertAllowance(allowance: number, from: AllowanceBasis, to: AllowanceBasis): number {
  requireNumber('convertAllowance', 'an allowance of 0 or more', allowance, allowance >= 0);
  if (!isBasis(from) || !isBasis(to)) {
    throw new RangeError('convertAllowance requires bases of normal_time or shift');
  }
  if (from === 'shift') {
    requireNumber('convertAllowance', 'an allowance below the whole shift', allowance, allowance < 1);
  }
  if (from === to) return allowance;
  return from === 'shift' ? allowance / (1 - allowance) : allowance / (1 + allowance);
}

function isBasis(basis: AllowanceBasis): boolean {
  return basis === 'normal_time' || basis === 'shift';
}
