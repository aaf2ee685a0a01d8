import { normalQuantile } from './normal-quantile';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';

/**
 * Wilson interval of a share, for instance of parts right first time. It stays inside 0 to 1 and is sound
 * for few parts, where share ± 2 deviations is neither.
 *
 * Formula: (x + z²/2 ± z·√(x·(n − x)/n + z²/4)) / (n + z²)
 *   x  parts that count, n  parts inspected
 *   z  two-sided normal quantile of the confidence
 * Source: E. B. Wilson, Journal of the American Statistical Association 22, 1927, pp. 209–212;
 * R. G. Newcombe, Statistics in Medicine 17, 1998, pp. 857–872, method 3.
 *
 * @throws {RangeError} wilsonInterval requires a whole number inspected from 1
 * @throws {RangeError} wilsonInterval requires a whole number that counts, from 0 to the number inspected
 * @throws {RangeError} wilsonInterval requires a confidence above 0 and below 1
 * @example
 * wilsonInterval(81, 263).lower.toFixed(4) // => '0.2553'
 */
export function wilsonInterval(
  counted: number,
  inspected: number,
  confidence = 0.95,
): { readonly lower: number; readonly upper: number } {
  const isWhole = Number.isSafeInteger;
  requireNumber(
    'wilsonInterval',
    'a whole number inspected from 1',
    inspected,
    isWhole(inspected) && inspected >= 1,
  );
  requireNumber(
    'wilsonInterval',
    'a whole number that counts, from 0 to the number inspected',
    counted,
    isWhole(counted) && counted >= 0 && counted <= inspected,
  );
  requireConfidence('wilsonInterval', confidence);
  const z = -normalQuantile((1 - confidence) / 2);
  return {
    lower: counted === 0 ? 0 : lowerLimit(counted, inspected, z),
    upper: counted === inspected ? 1 : 1 - lowerLimit(inspected - counted, inspected, z),
  };
}

/** Written as a quotient of sums: the printed form subtracts two nearly equal numbers for a small share. */
function lowerLimit(counted: number, inspected: number, z: number): number {
  const square = z * z;
  const root = z * Math.sqrt((counted * (inspected - counted)) / inspected + square / 4);
  return ((counted / inspected) * counted) / (counted + square / 2 + root);
}
