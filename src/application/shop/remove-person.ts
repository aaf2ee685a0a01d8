import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a person's code off the list; their records stay. A code that is not on it changes nothing. */
export function removePerson(bench: Bench, code: string): void {
  if (!bench.shop.value.people.includes(code)) return;
  bench.record(SHOP_STREAM, [{ kind: 'person-removed', code }]);
}
