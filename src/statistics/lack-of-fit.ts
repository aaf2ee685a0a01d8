import { fisherTails } from './fisher-tails';
import { observedMean } from './observed-mean';
import { requireNumber } from './require-number';
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
 * @throws {RangeError} lackOfFit requires as many drivers as responses
 * @throws {RangeError} lackOfFit requires readings of one size that differ
 * @example
 * lackOfFit([1, 1, 2, 2, 3, 3], [1, 2, 2, 3, 3, 4]).errorFreedom // => 3
 */
export function lackOfFit(driver: readonly number[], responses: readonly number[]): LackOfFit {
  requireReadings('lackOfFit', driver, 1);
  requireReadings('lackOfFit', responses, 1);
  if (driver.length !== responses.length) {
    throw new RangeError('lackOfFit requires as many drivers as responses');
  }
  const sizes = new Map<number, number[]>();
  for (const [i, x] of driver.entries()) {
    const readings = sizes.get(x);
    if (readings) readings.push(responses[i]!);
    else sizes.set(x, [responses[i]!]);
  }
  const fitFreedom = sizes.size - 2;
  const errorFreedom = responses.length - sizes.size;
  if (fitFreedom < 1 || errorFreedom < 1) {
    throw new RangeError('lackOfFit requires at least three sizes and one of them read twice');
  }
  let pureError = 0;
  for (const readings of sizes.values()) pureError += sumOfSquaredDeviations(readings);
  if (!(pureError > 0)) throw new RangeError('lackOfFit requires readings of one size that differ');

  const { intercept, slope } = simpleRegression(driver, responses);
  // SSE − SSPE as the sum it stands for, not as a difference of nearly equal numbers.
  let bend = 0;
  for (const [x, readings] of sizes) {
    bend += readings.length * (observedMean(readings) - intercept - slope * x) ** 2;
  }
  const f = bend / fitFreedom / (pureError / errorFreedom);
  // A pure error of rounding size beside a real bend leaves no finite ratio.
  requireNumber('lackOfFit', 'readings of one size that differ', f, true);
  const probability = fisherTails(f, fitFreedom, errorFreedom).upper;
  return { f, fitFreedom, errorFreedom, probability };
}
