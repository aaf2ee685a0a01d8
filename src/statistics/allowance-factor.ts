import { requireAllowance } from './require-allowance';

/** What an allowance is a share of: the normal time, or the shift. Both are in use; a firm chooses one. */
export type AllowanceBasis = 'normal_time' | 'shift';

/**
 * Allowance factor: what normal time is multiplied by to hold the allowance.
 *
 * Formula: 1 + A on normal time, 1/(1 − A) on the shift
 *   A  allowance, a share (0.15 for 15 %): of the normal time, or of the shift; answer a pure number
 * Source: Stevenson, Operations Management, 14th edition, equations 7-7 and 7-8; Heizer & Render, Operations
 *   Management, 11th edition, equation 10-3 (the shift).
 *
 * @throws {RangeError} allowanceFactor requires an allowance from 0 to 1000000
 * @throws {RangeError} allowanceFactor requires an allowance below the whole shift
 * @throws {RangeError} allowanceFactor requires a basis of normal_time or shift
 * @example
 * allowanceFactor(0.15, 'shift') // => 1.1764705882352942
 */
export function allowanceFactor(allowance: number, basis: AllowanceBasis): number {
  requireAllowance('allowanceFactor', allowance, basis);
  return basis === 'normal_time' ? 1 + allowance : 1 / (1 - allowance);
}
