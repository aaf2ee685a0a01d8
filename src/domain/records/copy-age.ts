import { compareRecords } from './compare-records';
import type { LogRecord } from './log-record';
import type { ShopFact } from './shop-fact';
import type { Stamp } from './stamp';

/** How old the last copy outside the browser is, and what it lacks. */
export type CopyAge =
  | { readonly isCopied: false; readonly recordsSince: number; readonly isDue: boolean }
  | {
      readonly isCopied: true;
      readonly how: Extract<ShopFact, { kind: 'copy-made-outside' }>['how'];
      readonly madeAt: Stamp;
      readonly ageMs: number;
      /** Records of the log that the copy does not hold. */
      readonly recordsSince: number;
      /** Older than a day, and something was recorded since. */
      readonly isDue: boolean;
    };

const DAY_MS = 86_400_000;

/**
 * Age of the last copy this tablet made outside the browser. A copy that another tablet made does not count:
 * it holds nothing of what was recorded here since the last merge.
 *
 * @param shop records of the shop's stream, in any order
 * @param records how many records the log holds now
 */
export function copyAge(
  shop: readonly LogRecord[],
  { device, records, now }: { device: string; records: number; now: Stamp },
): CopyAge {
  const copy = shop
    .filter((record) => record.device === device && record.fact.kind === 'copy-made-outside')
    .sort(compareRecords)
    .at(-1);
  if (copy?.fact.kind !== 'copy-made-outside') {
    return { isCopied: false, recordsSince: records, isDue: records > 0 };
  }
  const ageMs = Math.max(0, now.wallMs - copy.stamp.wallMs);
  // The record that says so came after the copy; nothing is lost when the copy lacks it.
  const recordsSince = Math.max(0, records - copy.fact.records - 1);
  return {
    isCopied: true,
    how: copy.fact.how,
    madeAt: copy.stamp,
    ageMs,
    recordsSince,
    isDue: ageMs >= DAY_MS && recordsSince > 0,
  };
}
