import { compensatedSum } from './compensated-sum';
import { householderFactor } from './householder-factor';
import { observedMean } from './observed-mean';
import { requireReadings } from './require-readings';

export type LeastSquaresFit = {
  /** The constant, then one coefficient a driver. */
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  /** √(SSE/(n − p − 1)), in the unit of the response. */
  readonly residualDeviation: number;
  readonly residualSumOfSquares: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
  readonly residuals: readonly number[];
  /** How much each observation pulls the line to itself, 0 to 1; they sum to the number of coefficients. */
  readonly leverages: readonly number[];
  /** Leverage that a point with these drivers would have: (standard error of its mean / s)². */
  readonly leverageAt: (point: readonly number[]) => number;
};

/**
 * Linear least squares with a constant and any number of drivers.
 *
 * Formula: minimise Σ(y − a − Σbⱼxⱼ)². The drivers are centred on their means and the problem solved by
 * Householder reflections, never through XᵀX, which would double the digits lost; one step of refinement
 * on the residuals follows.
 *   y      response, for instance normal time in minutes
 *   xⱼ     drivers, for instance length in metres
 *   a, bⱼ  constant in the unit of y, coefficients in units of y per unit of xⱼ
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 3rd edition, section 5.3; Å. Björck,
 * Numerical Methods for Least Squares Problems, 1996, section 2.9 (both from memory).
 *
 * @param name the function that the messages name
 * @throws {RangeError} leastSquares requires one driver or more, each as long as the responses
 * @throws {RangeError} leastSquares requires more observations than coefficients
 * @throws {RangeError} leastSquares requires drivers that vary and are not sums of one another
 * @throws {RangeError} leastSquares requires responses that differ
 * @throws {RangeError} leastSquares requires finite readings no larger than 1e150 in size
 * @example
 * leastSquares([[1, 2, 3, 4]], [3, 5, 7, 10]).degreesOfFreedom // => 2
 */
export function leastSquares(
  drivers: readonly (readonly number[])[],
  responses: readonly number[],
  name = 'leastSquares',
): LeastSquaresFit {
  const n = responses.length;
  const p = drivers.length;
  if (p === 0 || drivers.some((driver) => driver.length !== n)) {
    throw new RangeError(`${name} requires one driver or more, each as long as the responses`);
  }
  if (n <= p + 1) throw new RangeError(`${name} requires more observations than coefficients`);
  for (const values of [...drivers, responses]) requireReadings(name, values, 1);

  const driverMeans = drivers.map((driver) => observedMean(driver));
  const responseMean = observedMean(responses);
  const centred = drivers.map((driver, j) => driver.map((x) => x - driverMeans[j]!));
  const offsets = responses.map((y) => y - responseMean);
  const factor = householderFactor(centred);
  if (factor === 'dependent') {
    throw new RangeError(`${name} requires drivers that vary and are not sums of one another`);
  }
  const total = sumOfSquares(offsets);
  if (!(total > 0)) throw new RangeError(`${name} requires responses that differ`);

  const slopes = factor.solve(offsets);
  const residualsOf = () =>
    offsets.map((offset, i) => compensatedSum([offset, ...slopes.map((b, j) => -b * centred[j]![i]!)]));
  for (const [j, correction] of factor.solve(residualsOf()).entries()) slopes[j]! += correction;
  const residuals = residualsOf();
  const constant = compensatedSum([responseMean, ...slopes.map((b, j) => -b * driverMeans[j]!)]);

  const residualSumOfSquares = sumOfSquares(residuals);
  const degreesOfFreedom = n - p - 1;
  const residualDeviation = Math.sqrt(residualSumOfSquares / degreesOfFreedom);
  const leverageAt = (point: readonly number[]) => {
    requireReadings(name, point, 1);
    if (point.length !== p) throw new RangeError(`${name} requires a point with one value a driver`);
    return 1 / n + sumOfSquares(factor.whiten(point.map((x, j) => x - driverMeans[j]!)));
  };
  const coefficients = [constant, ...slopes];
  const standardErrors = [
    residualDeviation * Math.sqrt(leverageAt(driverMeans.map(() => 0))),
    ...factor.inverseRowNorms.map((norm) => residualDeviation * norm),
  ];
  // Drivers that differ by next to nothing, such as 0 and 1e-320, would need a slope past every double.
  if (![...coefficients, ...standardErrors].every(Number.isFinite)) {
    throw new RangeError(`${name} requires drivers that vary and are not sums of one another`);
  }
  return {
    coefficients,
    standardErrors,
    residualDeviation,
    residualSumOfSquares,
    degreesOfFreedom,
    rSquared: 1 - residualSumOfSquares / total,
    residuals,
    leverages: responses.map((_, i) => leverageAt(drivers.map((driver) => driver[i]!))),
    leverageAt,
  };
}

function sumOfSquares(values: readonly number[]): number {
  return compensatedSum(values.map((value) => value * value));
}
