import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Tapping } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/**
 * How a part is tapped at the station from its next turn on.
 *
 * @throws {RangeError} setTapping requires a part of the shop
 */
export function setTapping(bench: Bench, part: string, tapping: Tapping): void {
  const known = bench.shop.value.parts.find(({ id }) => id === part);
  if (!known) throw new RangeError('setTapping requires a part of the shop');
  if (known.tapping !== tapping) bench.record(SHOP_STREAM, [{ kind: 'tapping-set', part, tapping }]);
}
