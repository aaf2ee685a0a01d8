import type { AllowanceBasis } from './allowance-factor';
import { requireNumber } from './require-number';

/**
 * Requirement on an allowance given as a share (0.15 for 15 %): of normal time 0 to a million, of the shift 0 to
 * below 1.
 *
 * @throws {RangeError} "functionName requires a basis of normal_time or shift"
 * @throws {RangeError} "functionName requires an allowance from 0 to 1000000"
 * @throws {RangeError} "functionName requires an allowance below the whole shift"
 */
export function requireAllowance(functionName: string, allowance: number, basis: AllowanceBasis): void {
  if (basis !== 'normal_time' && basis !== 'shift') {
    throw new RangeError(`${functionName} requires a basis of normal_time or shift`);
  }
  const isShare = allowance >= 0 && allowance <= 1e6;
  requireNumber(functionName, 'an allowance from 0 to 1000000', allowance, isShare);
  if (basis === 'shift') {
    requireNumber(functionName, 'an allowance below the whole shift', allowance, allowance < 1);
  }
}
