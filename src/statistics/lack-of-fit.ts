import { fisherProbability } from './fisher-probability';
import { observedMean } from './observed-mean';
import { requireReadings } from './require-readings';
import { simpleRegression } from './simple-regression';
import { sumOfSquaredDeviations } from './sum-of-squared-deviations';

export type LackOfFit = {
  readonly f: number;
  /** Degrees of freedom: sizes less two, and readings less sizes. */
  readonly fitFreedom: number;
  readonly errorFreedom: number;
  /** Small: the readings bend away from a straight line by more than they scatter. */
  readonly probability: number;
};

/**
 * Lack of fit of a straight line: do the means of the sizes stray from the line by more than the readings
 * within a size stray from their mean?
 *
 * Formula: F = [(SSE − SSPE)/(m − 2)] / [SSPE/(N − m)], probability P(F′ > F) on m − 2 and N − m
 *   SSE   Σ of squares about the line, in the unit of the response squared
 *   SSPE  Σ of squares about the mean of each size, same unit
 *   m, N  sizes (different drivers) and readings
 * Source: N. R. Draper and H. Smith, Applied Regression Analysis, 3rd edition, section 2.1;
 * D. C. Montgomery and G. C. Runger, Applied Statistics and Probability for Engineers, section S11-1.
 *
 * @throws {RangeError} lackOfFit requires at least three sizes and one of them read twice
 * @throws {RangeError} lackOfFit requires readings of one size that differ
 * @throws {RangeError} simpleRegression requires more observations than coefficients
 * @example
 * lackOfFit([1, 1, 2, 2, 3, 3], [1, 2, 2, 3, 3, 4]).errorFreedom // => 3
 */
export function lackOfFit(driver: readonly number[], responses: readonly number[]): LackOfFit {
  requireReadings('lackOfFit', driver, 1);
  requireReadings('lackOfFit', responses, 1);
  const sizes = new Map<number, number[]>();
  for (const [i, x] of driver.entries()) {
    const response = responses[i];
    if (response !== undefined) sizes.set(x, [...(sizes.get(x) ?? []), response]);
  }
  const fitFreedom = sizes.size - 2;
  const errorFreedom = responses.length - sizes.size;
  if (fitFreedom < 1 || errorFreedom < 1) {
    throw new RangeError('lackOfFit requires at least three sizes and one of them read twice');
  }
  const { fit } = simpleRegression(driver, responses);
  let pureError = 0;
  let bend = 0;
  for (const [x, readings] of sizes) {
    const mean = observedMean(readings);
    pureError += sumOfSquaredDeviations(readings);
    // SSE − SSPE as the sum it stands for, not as a difference of nearly equal numbers.
    bend += readings.length * (mean - fit.coefficients[0]! - fit.coefficients[1]! * x) ** 2;
  }
  if (!(pureError > 0)) throw new RangeError('lackOfFit requires readings of one size that differ');
  const f = bend / fitFreedom / (pureError / errorFreedom);
  // The upper tail of F is the lower tail of 1/F with the degrees exchanged, which keeps small answers exact.
  const probability = f > 0 ? fisherProbability(1 / f, errorFreedom, fitFreedom) : 1;
  return { f, fitFreedom, errorFreedom, probability };
}
