import { learningExponent } from './learning-exponent';
import { requireNumber } from './require-number';

/**
 * Learning curve, cumulative-average form (Wright): the average time of all units so far falls to the
 * rate at each doubling. The unit form gives other figures from the same rate: say which was used.
 *
 * Formula: average A(n) = T₁·n^b, total n·A(n), n-th unit n·A(n) − (n − 1)·A(n − 1), b = ln(rate)/ln 2
 *   T₁    time of the first unit, any unit of time
 *   n     number of units
 *   rate  share that remains at each doubling, 0.8 for an "80 % curve"
 * Source: T. P. Wright, Journal of the Aeronautical Sciences 3, 1936, pp. 122–128.
 *
 * @throws {RangeError} learningCurveCumulativeAverage requires a first time above zero and below 1e150
 * @throws {RangeError} learningCurveCumulativeAverage requires a whole number of units from 1
 * @throws {RangeError} learningCurveCumulativeAverage requires a rate above 0 and at most 1
 * @example
 * learningCurveCumulativeAverage(100, 0.8, 2).total // => 160
 */
export function learningCurveCumulativeAverage(
  firstTime: number,
  rate: number,
  units: number,
): { readonly average: number; readonly total: number; readonly unitTime: number } {
  requireNumber(
    'learningCurveCumulativeAverage',
    'a rate above 0 and at most 1',
    rate,
    rate > 0 && rate <= 1,
  );
  requireNumber(
    'learningCurveCumulativeAverage',
    'a first time above zero and below 1e150',
    firstTime,
    firstTime > 0 && firstTime < 1e150,
  );
  requireNumber(
    'learningCurveCumulativeAverage',
    'a whole number of units from 1',
    units,
    Number.isSafeInteger(units) && units >= 1,
  );
  const exponent = learningExponent(rate);
  const average = firstTime * units ** exponent;
  // total(n) − total(n − 1) loses its digits for large n; this form does not.
  const unitTime =
    units === 1
      ? firstTime
      : -firstTime * units ** (1 + exponent) * Math.expm1((1 + exponent) * Math.log1p(-1 / units));
  return { average, total: average * units, unitTime };
}
