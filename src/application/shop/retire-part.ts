import { SHOP_STREAM } from '../../domain/records/log-record';
import { isSameCode } from '../../domain/shop/known-code';
import type { Bench } from '../bench';

/**
 * Takes a part out of use, or back into it. Its records stay.
 *
 * @throws {RangeError} retirePart requires a part of the shop
 * @throws {RangeError} retirePart requires, to bring a part back, a code that no part in use has
 */
export function retirePart(bench: Bench, part: string, retired: boolean): void {
  const { parts } = bench.shop.value;
  const own = parts.find(({ id }) => id === part);
  if (!own) throw new RangeError('retirePart requires a part of the shop');
  if (own.retired === retired) return;
  const isTaken = parts.some(
    (other) => other.id !== part && !other.retired && isSameCode(other.code, own.code),
  );
  if (!retired && isTaken) {
    throw new RangeError('retirePart requires, to bring a part back, a code that no part in use has');
  }
  bench.record(SHOP_STREAM, [{ kind: 'part-retired', part, retired }]);
}
