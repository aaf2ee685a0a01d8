import type { Stamp } from './stamp';

/**
 * Time between two moments, in milliseconds, never negative.
 *
 * Inside one run it is the difference of the monotonic clock. Across runs it is the difference of
 * the wall clock, because the monotonic clock began anew; a wall clock that was set back gives 0.
 */
export function elapsedMs(from: Stamp, to: Stamp): number {
  const difference = from.run === to.run ? to.monoMs - from.monoMs : to.wallMs - from.wallMs;
  return Math.max(0, difference);
}
