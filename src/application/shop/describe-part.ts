import { SHOP_STREAM } from '../../domain/records/log-record';
import { isSameCode } from '../../domain/shop/known-code';
import type { Bench } from '../bench';

/**
 * Changes the code or the name of a part; what was recorded under the old code keeps it.
 *
 * @throws {RangeError} describePart requires a part of the shop
 * @throws {RangeError} describePart requires a code that no other part in use has
 */
export function describePart(bench: Bench, part: string, code: string, name: string): void {
  const { parts } = bench.shop.value;
  if (!parts.some(({ id }) => id === part)) throw new RangeError('describePart requires a part of the shop');
  const wanted = code.trim();
  const isTaken = parts.some(
    (other) => other.id !== part && !other.retired && isSameCode(other.code, wanted),
  );
  if (wanted === '' || isTaken) {
    throw new RangeError('describePart requires a code that no other part in use has');
  }
  bench.record(SHOP_STREAM, [{ kind: 'part-described', part, code: wanted, name: name.trim() }]);
}
