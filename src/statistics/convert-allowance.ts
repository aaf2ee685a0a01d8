import type { AllowanceBasis } from './allowance-factor';
import { requireAllowance } from './require-allowance';

/**
 * Converted allowance: the same allowance said as a share of the other thing.
 *
 * Formula: A = A′/(1 − A′) from the shift to normal time, A′ = A/(1 + A) back
 *   A  share of the normal time, 0 or more; A′  share of the shift, 0 to below 1
 * Source: algebra on Stevenson, Operations Management, 14th edition, equations 7-7 and 7-8.
 *
 * @throws {RangeError} convertAllowance requires an allowance from 0 to 1000000
 * @throws {RangeError} convertAllowance requires an allowance below the whole shift
 * @throws {RangeError} convertAllowance requires a basis of normal_time or shift
 * @example
 * convertAllowance(0.15, 'shift', 'normal_time') // => 0.17647058823529413
 */
export function convertAllowance(allowance: number, from: AllowanceBasis, to: AllowanceBasis): number {
  requireAllowance('convertAllowance', allowance, from);
  requireAllowance('convertAllowance', 0, to);
  if (from === to) return allowance;
  return from === 'shift' ? allowance / (1 - allowance) : allowance / (1 + allowance);
}
