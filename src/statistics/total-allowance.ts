import { compensatedSum } from './compensated-sum';
import { requireNumber } from './require-number';

/**
 * Total allowance: components added, not compounded.
 *
 * Formula: A = A₁ + A₂ + …
 *   A  shares of one basis, all of normal time or all of the shift; convert before adding (convert-allowance.ts)
 * Source: International Labour Office (Kanawaty, ed.), Introduction to Work Study, 4th edition, 1992; Stevenson,
 *   Operations Management, 14th edition, table 7.4.
 *
 * @throws {RangeError} totalAllowance requires finite components of 0 or more
 * @example
 * totalAllowance([0.05, 0.04, 0.02]) // => 0.11
 */
export function totalAllowance(components: readonly number[]): number {
  for (const share of components) {
    requireNumber('totalAllowance', 'finite components of 0 or more', share, share >= 0);
  }
  const total = compensatedSum(components);
  requireNumber('totalAllowance', 'components whose sum is a finite number', total, true);
  return total;
}
