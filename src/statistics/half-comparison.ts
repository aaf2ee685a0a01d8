import type { NotTested } from './not-tested';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { requirePositiveReadings } from './require-positive-readings';
import { welchComparison } from './welch-comparison';

/** Five a half: with four or fewer readings no interval is worth printing. */
const fewestReadings = 10;

export type HalfComparison =
  | NotTested
  | {
      readonly tested: true;
      /** Typical time of the second half as a multiple of the first: 0.9 is 10 % shorter. */
      readonly ratio: number;
      readonly lower: number;
      readonly upper: number;
      /** 'not-shown' when the interval of the ratio contains one. */
      readonly direction: 'falling' | 'rising' | 'not-shown';
    };

/**
 * Half comparison: is the second half of the study longer or shorter than the first?
 *
 * Formula: ratio = exp(m₂ − m₁), interval exp(m₂ − m₁ ± t·√(s₁²/n₁ + s₂²/n₂)), Welch's degrees of freedom
 *   m, s, n  mean, sample deviation and number of the natural logarithms of the times of a half
 * With an odd number of readings the middle one belongs to neither half.
 * Source: Welch's comparison as in welchComparison, on logarithms, so that the answer is a ratio.
 *
 * @throws {RangeError} halfComparison requires at least one reading
 * @throws {RangeError} halfComparison requires readings above zero
 * @throws {RangeError} halfComparison requires readings whose ratio is a finite number
 * @throws {RangeError} halfComparison requires a confidence above 0 and below 1
 * @example
 * halfComparison([4.1, 4, 3.9, 4, 4.1, 2.1, 2, 1.9, 2, 2.1]).direction // => 'falling'
 */
export function halfComparison(times: readonly number[], confidence = 0.95): HalfComparison {
  requirePositiveReadings('halfComparison', times, 1);
  requireConfidence('halfComparison', confidence);
  if (times.length < fewestReadings) return { tested: false, reason: 'too-few-readings' };
  const logs = times.map(Math.log);
  const half = Math.floor(logs.length / 2);
  const first = logs.slice(0, half);
  const second = logs.slice(logs.length - half);
  if (isConstant(first) && isConstant(second)) return { tested: false, reason: 'no-spread' };

  const { difference, lower, upper } = welchComparison(second, first, { confidence });
  const direction = upper < 0 ? 'falling' : lower > 0 ? 'rising' : 'not-shown';
  // The limits of a ratio between 5e-324 and 1e150 times the other half can leave the range of a double.
  requireNumber('halfComparison', 'readings whose ratio is a finite number', Math.exp(upper), true);
  return {
    tested: true,
    ratio: Math.exp(difference),
    lower: Math.exp(lower),
    upper: Math.exp(upper),
    direction,
  };
}

function isConstant(values: readonly number[]): boolean {
  return values.every((value) => value === values[0]);
}
