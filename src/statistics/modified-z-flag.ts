import { median } from './median';
import type { NotTested } from './not-tested';
import { requirePositiveReadings } from './require-positive-readings';
import { requireReadings } from './require-readings';

const fewestReadings = 7;

export type ModifiedZFlag =
  | NotTested
  | {
      readonly tested: true;
      /** One score a reading, in the order given. */
      readonly scores: readonly number[];
      /** Positions, counted from 0, of the readings that deserve a look. Nothing is excluded here. */
      readonly flagged: readonly number[];
    };

/**
 * Modified z flag: which readings lie far from the median, measured by the median distance itself, so
 * that one wild reading cannot hide itself or another.
 *
 * Formula: M = 0.6745 · (x − median) / MAD, flagged when |M| > 3.5
 *   x    natural logarithms of the times (scale 'log', the default), or the times as they are ('raw')
 *   MAD  median of |x − median|
 * No test below seven readings, and none when more than half of them are equal (MAD is then 0).
 * Source: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, ASQC Quality Press 1993,
 * section 3.3, pp. 11–13; NIST/SEMATECH e-Handbook 1.3.5.17.
 *
 * @throws {RangeError} modifiedZFlag requires at least one reading
 * @throws {RangeError} modifiedZFlag requires readings above zero (scale 'log')
 * @throws {RangeError} modifiedZFlag requires a threshold above zero
 * @example
 * modifiedZFlag([0.44, 0.45, 0.43, 0.46, 0.44, 0.45, 0.42, 0.92]).flagged // => [7]
 */
export function modifiedZFlag(
  times: readonly number[],
  options: { readonly threshold?: number; readonly scale?: 'log' | 'raw' } = {},
): ModifiedZFlag {
  const { threshold = 3.5, scale = 'log' } = options;
  if (scale === 'log') requirePositiveReadings('modifiedZFlag', times, 1);
  else requireReadings('modifiedZFlag', times, 1);
  if (!(threshold > 0 && threshold < Number.POSITIVE_INFINITY)) {
    throw new RangeError('modifiedZFlag requires a threshold above zero');
  }
  if (times.length < fewestReadings) return { tested: false, reason: 'too-few-readings' };

  const x = scale === 'log' ? times.map(Math.log) : times;
  const centre = median(x);
  const spread = median(x.map((value) => Math.abs(value - centre)));
  if (!(spread > 0)) return { tested: false, reason: 'no-spread' };
  // A spread of rounding size against a wild reading could overflow: the score is capped, not infinite.
  const scores = x.map((value) => clamp((0.6745 * (value - centre)) / spread));
  const flagged = scores.flatMap((score, i) => (Math.abs(score) > threshold ? [i] : []));
  return { tested: true, scores, flagged };
}

function clamp(score: number): number {
  return Math.max(-Number.MAX_VALUE, Math.min(Number.MAX_VALUE, score));
}
