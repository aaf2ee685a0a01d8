import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a person's code off the list; their records stay. */
export function removePerson(bench: Bench, code: string): void {
  bench.record(SHOP_STREAM, [{ kind: 'person-removed', code }]);
}
