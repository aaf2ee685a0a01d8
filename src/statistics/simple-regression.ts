import { type LeastSquaresFit, leastSquares } from './least-squares';
import { requireConfidence } from './require-confidence';
import { studentQuantile } from './student-quantile';

export type SimpleRegression = {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Half-widths of the intervals at the confidence asked for. */
  readonly interceptHalfWidth: number;
  readonly slopeHalfWidth: number;
  /** Residual deviation s, in the unit of the response. */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
  /** All else: residuals, leverages, and what regressionPrediction needs. */
  readonly fit: LeastSquaresFit;
};

/**
 * Simple regression: a time as a constant plus a rate times one driver, the usual form of standard data
 * for a variable element.
 *
 * Formula: y = a + b·x, b = Σ(x − x̄)(y − ȳ)/Sxx, a = ȳ − b·x̄, s² = Σ(y − a − b·x)²/(n − 2),
 *          half-widths t·s/√Sxx for b and t·s·√(1/n + x̄²/Sxx) for a
 *   y    response, for instance normal time in minutes
 *   x    driver, for instance length in metres; Sxx = Σ(x − x̄)²
 *   s    residual deviation, in the unit of y
 *   t    two-sided Student quantile on n − 2 degrees of freedom
 * Source: D. C. Montgomery, E. A. Peck and G. G. Vining, Introduction to Linear Regression Analysis,
 * sections 2.2 to 2.4.
 *
 * @throws {RangeError} simpleRegression requires more observations than coefficients
 * @throws {RangeError} simpleRegression requires drivers that vary and are not sums of one another
 * @throws {RangeError} simpleRegression requires responses that differ
 * @throws {RangeError} simpleRegression requires a confidence above 0 and below 1
 * @example
 * simpleRegression([1, 2, 3], [2, 4, 6]).slope // => 2
 */
export function simpleRegression(
  driver: readonly number[],
  responses: readonly number[],
  options: { readonly confidence?: number } = {},
): SimpleRegression {
  const { confidence = 0.95 } = options;
  requireConfidence('simpleRegression', confidence);
  const fit = leastSquares([driver], responses, 'simpleRegression');
  const { degreesOfFreedom, residualDeviation, rSquared } = fit;
  const t = studentQuantile(1 - (1 - confidence) / 2, degreesOfFreedom);
  const [intercept, slope] = fit.coefficients as [number, number];
  const [interceptError, slopeError] = fit.standardErrors as [number, number];
  return {
    intercept,
    slope,
    interceptError,
    slopeError,
    interceptHalfWidth: t * interceptError,
    slopeHalfWidth: t * slopeError,
    residualDeviation,
    degreesOfFreedom,
    rSquared,
    fit,
  };
}
