import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** A target longer than a day is a slip of the finger. */
export const LONGEST_TARGET_MS = 86_400_000;

/**
 * Sets the time a part should take, or takes the target away with null.
 *
 * @throws {RangeError} setTarget requires a time above 0 and of at most a day
 */
export function setTarget(
  bench: Bench,
  part: string,
  targetMs: number | null,
  from: { source: 'typed' } | { source: 'standard'; study: string } = { source: 'typed' },
): void {
  if (targetMs !== null && !(targetMs > 0 && targetMs <= LONGEST_TARGET_MS)) {
    throw new RangeError('setTarget requires a time above 0 and of at most a day');
  }
  const whole = targetMs === null ? null : Math.max(1, Math.round(targetMs));
  bench.record(SHOP_STREAM, [{ kind: 'target-set', part, targetMs: whole, ...from }]);
}
