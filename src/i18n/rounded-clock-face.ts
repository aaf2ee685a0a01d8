import { clockFace } from './format-duration';

/**
 * A duration that is a figure and not a running clock: 1:31 for 90.8 s. A running clock is cut, because a second
 * that is not over has not been reached; a mean or a target is rounded, because it is not going anywhere.
 */
export function roundedClockFace(ms: number): string {
  return clockFace(Math.round(ms / 1_000) * 1_000);
}
