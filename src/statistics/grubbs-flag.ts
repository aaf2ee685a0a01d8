import { grubbsCriticalValue } from './grubbs-critical-value';
import type { NotTested } from './not-tested';
import { observedMean } from './observed-mean';
import { requireNumber } from './require-number';
import { requirePositiveReadings } from './require-positive-readings';
import { requireReadings } from './require-readings';
import { sampleStandardDeviation } from './sample-standard-deviation';

const fewestReadings = 7;

export type GrubbsFlag =
  | NotTested
  | {
      readonly tested: true;
      /** Distance of the farthest reading from the mean, in sample deviations. */
      readonly statistic: number;
      readonly critical: number;
      /** Position of the farthest reading, counted from 0. */
      readonly index: number;
      readonly side: 'high' | 'low';
      /** True when the reading deserves a look. A person decides; nothing is excluded here. */
      readonly flagged: boolean;
    };

/**
 * Grubbs flag: is the reading farthest from the mean farther than chance alone would often put it?
 * It points at a reading for a person to look at and never excludes one.
 *
 * Formula: G = max|x − x̄| / s, flagged when G > grubbsCriticalValue(n, α)
 *   x   natural logarithms of the times (scale 'log', the default), or the times as they are ('raw')
 *   x̄   their mean
 *   s   their sample deviation (n − 1)
 *   α   significance, 0.05 by default
 * Logarithms because hand times are skewed to the right: on the raw scale an ordinary slow reading is
 * flagged too often. No test below seven readings, and none when no reading differs.
 * Source: F. E. Grubbs, Technometrics 11, 1969; ASTM E178; NIST/SEMATECH e-Handbook 1.3.5.17.1.
 *
 * @throws {RangeError} grubbsFlag requires at least one reading
 * @throws {RangeError} grubbsFlag requires readings above zero (scale 'log')
 * @throws {RangeError} grubbsFlag requires a significance strictly between 0 and 1
 * @example
 * grubbsFlag([0.44, 0.45, 0.43, 0.46, 0.44, 0.45, 0.44, 0.92]).flagged // => true
 */
export function grubbsFlag(
  times: readonly number[],
  options: { readonly significance?: number; readonly scale?: 'log' | 'raw' } = {},
): GrubbsFlag {
  const { significance = 0.05, scale = 'log' } = options;
  if (scale === 'log') requirePositiveReadings('grubbsFlag', times, 1);
  else requireReadings('grubbsFlag', times, 1);
  requireNumber(
    'grubbsFlag',
    'a significance strictly between 0 and 1',
    significance,
    significance > 0 && significance < 1,
  );
  if (times.length < fewestReadings) return { tested: false, reason: 'too-few-readings' };

  const x = scale === 'log' ? times.map(Math.log) : times;
  const first = x[0]!;
  if (x.every((value) => value === first)) return { tested: false, reason: 'no-spread' };
  const mean = observedMean(x);
  const deviation = sampleStandardDeviation(x);
  if (!(deviation > 0)) return { tested: false, reason: 'no-spread' };
  let index = 0;
  for (let i = 1; i < x.length; i += 1) {
    if (Math.abs(x[i]! - mean) > Math.abs(x[index]! - mean)) index = i;
  }
  const distance = x[index]! - mean;
  const statistic = Math.abs(distance) / deviation;
  const critical = grubbsCriticalValue(x.length, significance);
  const side = distance > 0 ? 'high' : 'low';
  return { tested: true, statistic, critical, index, side, flagged: statistic > critical };
}
