import type { NotTested } from './not-tested';
import { requireConfidence } from './require-confidence';
import { requireNumber } from './require-number';
import { requirePositiveReadings } from './require-positive-readings';
import { simpleRegression } from './simple-regression';

/** With four readings or fewer the interval is so wide that dots say more. */
const fewestReadings = 5;

export type TrendSlope =
  | NotTested
  | {
      readonly tested: true;
      /** Slope of the natural logarithm of the time a reading; 0.01 is about 1 % longer each time. */
      readonly slope: number;
      readonly lower: number;
      readonly upper: number;
      /** Fitted change from the first reading to the last, as a share of the first: −0.2 is 20 % shorter. */
      readonly changeOverRun: number;
      /** 'not-shown' when the interval of the slope contains zero. */
      readonly direction: 'falling' | 'rising' | 'not-shown';
    };

/**
 * Trend slope: do the times grow or shrink as the study goes on? Falling is learning: the study then
 * describes a moment. Rising is fatigue, a dulling tool or loading abrasive.
 *
 * Formula: ln x = a + b·i by least squares, interval b ± t·s(b), change over the run exp(b·(n − 1)) − 1
 *   x  times, any one unit, in order of time
 *   i  1, 2, … n
 *   t  two-sided Student quantile on n − 2 degrees of freedom
 * Source: least squares as in simpleRegression; logarithms because a share is learned, not a second.
 *
 * @throws {RangeError} trendSlope requires at least one reading
 * @throws {RangeError} trendSlope requires readings above zero
 * @throws {RangeError} trendSlope requires readings whose change over the run is a finite number
 * @throws {RangeError} trendSlope requires a confidence above 0 and below 1
 * @example
 * trendSlope([8, 4, 2, 1, 0.5]).direction // => 'falling'
 */
export function trendSlope(times: readonly number[], confidence = 0.95): TrendSlope {
  requirePositiveReadings('trendSlope', times, 1);
  requireConfidence('trendSlope', confidence);
  if (times.length < fewestReadings) return { tested: false, reason: 'too-few-readings' };
  const logs = times.map(Math.log);
  const first = logs[0]!;
  if (logs.every((value) => value === first)) return { tested: false, reason: 'no-spread' };

  const order = times.map((_, i) => i + 1);
  const { slope, slopeHalfWidth } = simpleRegression(order, logs, { confidence });
  const lower = slope - slopeHalfWidth;
  const upper = slope + slopeHalfWidth;
  const direction = upper < 0 ? 'falling' : lower > 0 ? 'rising' : 'not-shown';
  const changeOverRun = Math.expm1(slope * (times.length - 1));
  requireNumber('trendSlope', 'readings whose change over the run is a finite number', changeOverRun, true);
  return { tested: true, slope, lower, upper, changeOverRun, direction };
}
