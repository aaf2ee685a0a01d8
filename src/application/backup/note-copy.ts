import { SHOP_STREAM } from '../../domain/records/log-record';
import type { ShopFact } from '../../domain/records/shop-fact';
import type { Bench } from '../bench';

type Copy = Extract<ShopFact, { kind: 'copy-made-outside' }>;

/** Records that a copy left the browser, so that its age can always be shown. */
export function noteCopy(bench: Bench, how: Copy['how'], records: number): void {
  bench.record(SHOP_STREAM, [{ kind: 'copy-made-outside', how, records }]);
}
