import { SHOP_STREAM } from '../../domain/records/log-record';
import type { ShopFact } from '../../domain/records/shop-fact';
import type { Bench } from '../bench';
import type { CopyMade } from './copy-made';

type Copy = Extract<ShopFact, { kind: 'copy-made-outside' }>;

/** Records that a copy left the browser, so that its age and what it lacks can always be shown. */
export function noteCopy(
  bench: Bench,
  how: Copy['how'],
  { summary: { records }, upTo }: Pick<CopyMade, 'summary' | 'upTo'>,
): void {
  bench.record(SHOP_STREAM, [{ kind: 'copy-made-outside', how, records, upTo }]);
}
