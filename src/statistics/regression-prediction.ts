import type { LeastSquaresFit } from './least-squares';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { standardDataTime } from './standard-data-time';
import { studentQuantile } from './student-quantile';

export type RegressionPrediction = {
  readonly value: number;
  /** Of the mean time at these drivers: what a standard time rests on. */
  readonly meanHalfWidth: number;
  /** Of the average of the parts asked for: one part, or a lot to quote for. */
  readonly partsHalfWidth: number;
  /** Above the greatest leverage in the study the point is an extrapolation, even inside both ranges. */
  readonly leverage: number;
};

/**
 * Regression prediction: the time that fitted standard data gives for a new size, with the interval of
 * its mean and of the average of Q parts.
 *
 * Formula: value = a + Σbⱼx₀ⱼ, mean t·s·√h, parts √((t·s·√h)² + (t·s)²/Q)
 *   x₀  drivers of the new size, in the units of the study
 *   h   its leverage, 1/n + (x₀ − x̄)²/Sxx with one driver
 *   s   residual deviation, in the unit of the response
 *   t   two-sided Student quantile on the fit's degrees of freedom
 *   Q   parts, 1 by default
 * Source: D. C. Montgomery, E. A. Peck and G. G. Vining, Introduction to Linear Regression Analysis,
 * sections 3.4.2 and 3.5; N. R. Draper and H. Smith, Applied Regression Analysis, 3rd edition,
 * section 3.1 (mean of q observations).
 *
 * @throws {RangeError} regressionPrediction requires a whole number of parts from 1
 * @throws {RangeError} regressionPrediction requires a confidence above 0 and below 1
 * @throws {RangeError} regressionPrediction requires one finite driver a coefficient
 * @throws {RangeError} regressionPrediction requires drivers within reach of the study
 * @example
 * regressionPrediction({ coefficients: [1, 2], leverageAt: () => 0.5, residualDeviation: 0, degreesOfFreedom: 3 }, [4]).value // => 9
 */
export function regressionPrediction(
  fit: Pick<LeastSquaresFit, 'coefficients' | 'leverageAt' | 'residualDeviation' | 'degreesOfFreedom'>,
  drivers: readonly number[],
  options: { readonly confidence?: number; readonly parts?: number } = {},
): RegressionPrediction {
  const { confidence = 0.95, parts = 1 } = options;
  requireNumber(
    'regressionPrediction',
    'a whole number of parts from 1',
    parts,
    Number.isInteger(parts) && parts >= 1,
  );
  requireConfidence('regressionPrediction', confidence);
  const [constant, ...slopes] = fit.coefficients;
  if (drivers.length !== slopes.length || drivers.some((driver) => !(Math.abs(driver) <= 1e150))) {
    throw new RangeError('regressionPrediction requires one finite driver a coefficient');
  }
  const leverage = fit.leverageAt(drivers);
  const reach = studentQuantile(1 - (1 - confidence) / 2, fit.degreesOfFreedom) * fit.residualDeviation;
  const meanHalfWidth = reach * Math.sqrt(leverage);
  const partsHalfWidth = Math.hypot(meanHalfWidth, reach / Math.sqrt(parts));
  requireNumber('regressionPrediction', 'drivers within reach of the study', partsHalfWidth, true);
  const value = standardDataTime(constant!, slopes, drivers);
  return { value, meanHalfWidth, partsHalfWidth, leverage };
}
