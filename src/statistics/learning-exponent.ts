import { requireNumber } from './require-number';

/**
 * Learning exponent: the power of a learning curve from its rate, the share that remains at each doubling.
 *
 * Formula: b = ln(rate)/ln 2
 *   rate  0.8 for an "80 % curve"; 1 means no learning
 * Source: T. P. Wright, Journal of the Aeronautical Sciences 3, 1936, pp. 122–128.
 *
 * @throws {RangeError} learningExponent requires a rate above 0 and at most 1
 * @example
 * learningExponent(0.5) // => -1
 */
export function learningExponent(rate: number): number {
  requireNumber('learningExponent', 'a rate above 0 and at most 1', rate, rate > 0 && rate <= 1);
  return Math.log2(rate);
}
