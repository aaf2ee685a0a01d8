import { type LeastSquaresFit, leastSquares } from './least-squares';
import { requireConfidence } from './require-confidence';
import { studentQuantile } from './student-quantile';

export type TwoDriverRegression = {
  readonly intercept: number;
  readonly slopes: readonly [number, number];
  readonly interceptError: number;
  readonly slopeErrors: readonly [number, number];
  /** Half-widths of the intervals at the confidence asked for. */
  readonly interceptHalfWidth: number;
  readonly slopeHalfWidths: readonly [number, number];
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
  /** All else: residuals, leverages, and what regressionPrediction needs. */
  readonly fit: LeastSquaresFit;
};

/**
 * Two-driver regression: a time as a constant plus two rates times two drivers. More drivers than two are
 * not offered: a time study rarely has the readings to tell them apart.
 *
 * Formula: y = a + b₁x₁ + b₂x₂ by least squares (QR on centred drivers), s² = SSE/(n − 3)
 *   y         response, for instance normal time in minutes
 *   x₁, x₂    drivers, for instance length in metres and number of pieces
 *   a, b, s   constant, coefficients and residual deviation, in units of y (per unit of x)
 *   half-width = two-sided Student quantile on n − 3 degrees of freedom × standard error
 * Source: D. C. Montgomery, E. A. Peck and G. G. Vining, Introduction to Linear Regression Analysis,
 * chapter 3.
 *
 * @throws {RangeError} twoDriverRegression requires more observations than coefficients
 * @throws {RangeError} twoDriverRegression requires drivers that vary and are not sums of one another
 * @throws {RangeError} twoDriverRegression requires responses that differ
 * @throws {RangeError} twoDriverRegression requires a confidence above 0 and below 1
 * @example
 * twoDriverRegression([0, 1, 0, 1], [0, 0, 1, 1], [1, 2, 4, 5]).degreesOfFreedom // => 1
 */
export function twoDriverRegression(
  first: readonly number[],
  second: readonly number[],
  responses: readonly number[],
  options: { readonly confidence?: number } = {},
): TwoDriverRegression {
  const { confidence = 0.95 } = options;
  requireConfidence('twoDriverRegression', confidence);
  const fit = leastSquares([first, second], responses, 'twoDriverRegression');
  const { degreesOfFreedom, residualDeviation, rSquared } = fit;
  const t = studentQuantile(1 - (1 - confidence) / 2, degreesOfFreedom);
  const [intercept, firstSlope, secondSlope] = fit.coefficients as [number, number, number];
  const [interceptError, firstError, secondError] = fit.standardErrors as [number, number, number];
  return {
    intercept,
    slopes: [firstSlope, secondSlope],
    interceptError,
    slopeErrors: [firstError, secondError],
    interceptHalfWidth: t * interceptError,
    slopeHalfWidths: [t * firstError, t * secondError],
    residualDeviation,
    degreesOfFreedom,
    rSquared,
    fit,
  };
}
