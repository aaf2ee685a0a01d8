import { requireNumber } from './require-number';

/** Below this the correction is within its own error for the counts of a study, and is left out. */
const NOTICEABLE = 0.2;

/**
 * Effective readings: how many independent readings a run of resembling ones is worth.
 *
 * Formula: nₑ = n·(1 − r₁)/(1 + r₁) when r₁ > 0.2, else n; never below 1
 *   n  readings, a count; r₁  lag-one autocorrelation inside one operator-day, −1 to below 1; nₑ a count that
 *   need not be whole
 * Source: Bayley & Hammersley, Supplement to the Journal of the Royal Statistical Society 8 (1946), pp.
 *   184–197, for a first-order process (from memory).
 *
 * @throws {RangeError} effectiveReadings requires a count of at least one reading
 * @throws {RangeError} effectiveReadings requires an autocorrelation from -1 to below 1
 * @example
 * effectiveReadings(60, 0.5) // => 20
 */
export function effectiveReadings(n: number, autocorrelation: number): number {
  requireNumber('effectiveReadings', 'a count of at least one reading', n, n >= 1);
  requireNumber(
    'effectiveReadings',
    'an autocorrelation from -1 to below 1',
    autocorrelation,
    autocorrelation >= -1 && autocorrelation < 1,
  );
  if (autocorrelation <= NOTICEABLE) return n;
  return Math.max(1, (n * (1 - autocorrelation)) / (1 + autocorrelation));
}
