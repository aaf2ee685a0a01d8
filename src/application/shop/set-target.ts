import { SHOP_STREAM } from '../../domain/records/log-record';
import { LONGEST_TARGET_MS, SHORTEST_TARGET_MS } from '../../domain/shop/target-limits';
import type { Bench } from '../bench';

/**
 * Sets the time a part should take, or takes the target away with null. Milliseconds.
 *
 * @throws {RangeError} setTarget requires a part of the shop
 * @throws {RangeError} setTarget requires a time from a second to a day
 */
export function setTarget(
  bench: Bench,
  part: string,
  targetMs: number | null,
  from: { source: 'typed' | 'takt' } | { source: 'standard'; study: string } = { source: 'typed' },
): void {
  if (!bench.shop.value.parts.some(({ id }) => id === part)) {
    throw new RangeError('setTarget requires a part of the shop');
  }
  if (targetMs !== null && !(targetMs >= SHORTEST_TARGET_MS && targetMs <= LONGEST_TARGET_MS)) {
    throw new RangeError('setTarget requires a time from a second to a day');
  }
  const whole = targetMs === null ? null : Math.round(targetMs);
  bench.record(SHOP_STREAM, [{ kind: 'target-set', part, targetMs: whole, ...from }]);
}
