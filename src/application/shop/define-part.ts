import { SHOP_STREAM } from '../../domain/records/log-record';
import { recordKey } from '../../domain/records/record-key';
import { isSameCode } from '../../domain/shop/known-code';
import type { Bench } from '../bench';

/**
 * Adds a part to the shop and gives its id.
 *
 * @throws {RangeError} definePart requires a code that no part in use has
 */
export function definePart(bench: Bench, code: string, name: string): string {
  const wanted = code.trim();
  const isTaken = bench.shop.value.parts.some((part) => !part.retired && isSameCode(part.code, wanted));
  if (wanted === '' || isTaken) throw new RangeError('definePart requires a code that no part in use has');
  const [record] = bench.record(SHOP_STREAM, [{ kind: 'part-defined', code: wanted, name: name.trim() }]);
  return recordKey(record!);
}
