import { SHOP_STREAM } from '../../domain/records/log-record';
import { isSameCode } from '../../domain/shop/known-code';
import type { Bench } from '../bench';

/**
 * Adds a person's code. A code, not a name: the record of a day needs no more. One that is on the list
 * already, in whatever spelling, stays as it is, and nothing is recorded.
 *
 * @throws {RangeError} addPerson requires a code
 */
export function addPerson(bench: Bench, code: string): void {
  const wanted = code.trim();
  if (wanted === '') throw new RangeError('addPerson requires a code');
  if (bench.shop.value.people.some((known) => isSameCode(known, wanted))) return;
  bench.record(SHOP_STREAM, [{ kind: 'person-added', code: wanted }]);
}
