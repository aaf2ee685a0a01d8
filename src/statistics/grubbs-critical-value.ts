import { requireNumber } from './require-number';
import { studentQuantile } from './student-quantile';

/**
 * Critical value of the two-sided Grubbs test: how many sample deviations from the mean the farthest of
 * n readings may lie before it is flagged.
 *
 * Formula: G = (n − 1)/√n · √(t² / (n − 2 + t²))
 *   n  number of readings
 *   t  Student quantile at 1 − α/(2n) on n − 2 degrees of freedom
 *   α  significance, the share of sound runs in which some reading is flagged
 * Source: F. E. Grubbs, Technometrics 11, 1969; NIST/SEMATECH e-Handbook 1.3.5.17.1; values as in
 * ASTM E178.
 *
 * @throws {RangeError} grubbsCriticalValue requires a whole number of readings from 3 to 1000000
 * @throws {RangeError} grubbsCriticalValue requires a significance strictly between 0 and 1
 * @example
 * grubbsCriticalValue(8).toFixed(3) // => '2.127'
 */
export function grubbsCriticalValue(n: number, significance = 0.05): number {
  if (!Number.isInteger(n) || n < 3 || n > 1e6) {
    throw new RangeError('grubbsCriticalValue requires a whole number of readings from 3 to 1000000');
  }
  requireNumber(
    'grubbsCriticalValue',
    'a significance strictly between 0 and 1',
    significance,
    significance > 0 && significance < 1,
  );
  // The lower quantile, whose small probability keeps the digits that 1 − α/(2n) would round away.
  const t = -studentQuantile(significance / (2 * n), n - 2);
  // Written with 1/t² so that a very large t does not overflow when squared.
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(1 / ((n - 2) / t / t + 1));
}
