import { learningExponent } from './learning-exponent';
import { requireNumber } from './require-number';

/**
 * Learning curve, unit form (Crawford): the time of the n-th unit itself falls to the rate at each
 * doubling. The cumulative-average form gives other figures from the same rate: say which was used.
 *
 * Formula: T(n) = T₁·n^b, b = ln(rate)/ln 2
 *   T₁    time of the first unit, any unit of time
 *   n     number of the unit
 *   rate  share that remains at each doubling, 0.8 for an "80 % curve"
 * Source: J. R. Crawford, 1944, as in any operations management text.
 *
 * @throws {RangeError} learningCurveUnit requires a first time above zero
 * @throws {RangeError} learningCurveUnit requires a whole unit number from 1
 * @throws {RangeError} learningCurveUnit requires a rate above 0 and at most 1
 * @example
 * learningCurveUnit(50, 0.8, 2) // => 40
 */
export function learningCurveUnit(firstTime: number, rate: number, unit: number): number {
  requireNumber('learningCurveUnit', 'a rate above 0 and at most 1', rate, rate > 0 && rate <= 1);
  requireNumber('learningCurveUnit', 'a first time above zero', firstTime, firstTime > 0);
  requireNumber(
    'learningCurveUnit',
    'a whole unit number from 1',
    unit,
    Number.isSafeInteger(unit) && unit >= 1,
  );
  return firstTime * unit ** learningExponent(rate);
}
