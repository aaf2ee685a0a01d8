import { clockFace } from './format-duration';
import { formatNumber } from './format-number';

/** From here on a tenth of a second is below what a hand can tap. */
const WHOLE_FROM_MS = 30_000;

/**
 * A time that is finished, or a mean or a target: 1:31 for 90.8 s, and below 30 s with its tenths, 0:07.4. A
 * running clock is cut, because a second that is not over has not been reached; this is rounded, because it is
 * not going anywhere.
 */
export function roundedClockFace(ms: number): string {
  const tenths = Math.round(Math.abs(ms) / 100);
  if (tenths * 100 >= WHOLE_FROM_MS) return clockFace(Math.round(ms / 1_000) * 1_000);
  const sign = ms < 0 && tenths > 0 ? '−' : '';
  return sign + clockFace(tenths * 100) + formatNumber((tenths % 10) / 10, 1).slice(1);
}
