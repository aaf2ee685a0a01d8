import { SHOP_STREAM } from '../../domain/records/log-record';
import type { PartSize } from '../../domain/records/standard-fact';
import type { Bench } from '../bench';

/**
 * Says how large a part is, for each driver that an element grows with.
 *
 * @throws {RangeError} sizePart requires a part of the shop
 * @throws {RangeError} sizePart requires sizes above 0
 */
export function sizePart(bench: Bench, part: string, sizes: readonly PartSize[]): void {
  if (!bench.shop.value.parts.some(({ id }) => id === part)) {
    throw new RangeError('sizePart requires a part of the shop');
  }
  if (!sizes.every(({ value }) => value > 0 && Number.isFinite(value))) {
    throw new RangeError('sizePart requires sizes above 0');
  }
  bench.record(SHOP_STREAM, [{ kind: 'part-sized', part, sizes }]);
}
