import { inOrder } from './in-order';
import type { LogRecord } from './log-record';
import type { ShopFact } from './shop-fact';

type CopyFact = Extract<ShopFact, { kind: 'copy-made-outside' }>;

/**
 * The record of the last copy that a tablet made outside the browser; undefined when it made none. A copy that
 * another tablet made does not count: it holds nothing of what was recorded here since the last merge.
 *
 * @param shop records of the shop's stream, in any order
 */
export function lastCopy(shop: readonly LogRecord[], device: string): LogRecord<CopyFact> | undefined {
  const isCopy = (record: LogRecord): record is LogRecord<CopyFact> =>
    record.device === device && record.fact.kind === 'copy-made-outside';
  return inOrder(shop.filter(isCopy)).at(-1);
}
