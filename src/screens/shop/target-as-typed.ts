import { roundedClockFace } from '../../i18n/rounded-clock-face';

/**
 * A target as a person could have typed it, without losing any of it: `1:31` when it is whole seconds, `0:07.4`
 * when it is short and has tenths, else decimal minutes with as many decimals as it takes to come back to the
 * same millisecond.
 */
export function targetAsTyped(targetMs: number | null): string {
  if (targetMs === null) return '';
  const isClockFace = targetMs % (targetMs < 30_000 ? 100 : 1_000) === 0;
  if (isClockFace) return roundedClockFace(targetMs);
  // A millisecond is 0.0000167 min: five decimals tell two of them apart.
  return String(Number((targetMs / 60_000).toFixed(5)));
}
