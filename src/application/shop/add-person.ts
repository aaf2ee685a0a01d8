import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/**
 * Adds a person's code. A code, not a name: the record of a day needs no more.
 *
 * @throws {RangeError} addPerson requires a code
 */
export function addPerson(bench: Bench, code: string): void {
  if (code.trim() === '') throw new RangeError('addPerson requires a code');
  bench.record(SHOP_STREAM, [{ kind: 'person-added', code: code.trim() }]);
}
