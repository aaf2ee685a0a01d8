import { roundedClockFace } from '../../i18n/rounded-clock-face';

/**
 * A target as a person could have typed it, without losing any of it: `1:31` when it is whole seconds, else
 * decimal minutes with as many decimals as it takes to come back to the same millisecond.
 */
export function targetAsTyped(targetMs: number | null): string {
  if (targetMs === null) return '';
  if (targetMs % 1_000 === 0) return roundedClockFace(targetMs);
  // A millisecond is 0.0000167 min: five decimals tell two of them apart.
  return String(Number((targetMs / 60_000).toFixed(5)));
}
