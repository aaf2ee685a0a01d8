import { lastCopy } from './last-copy';
import type { LogRecord } from './log-record';
import type { ShopFact } from './shop-fact';
import type { Stamp } from './stamp';

/** How old the last copy outside the browser is, and what it lacks. */
export type CopyAge = CopyDue &
  (
    | { readonly isCopied: false }
    | {
        readonly isCopied: true;
        readonly how: Extract<ShopFact, { kind: 'copy-made-outside' }>['how'];
        readonly madeAt: Stamp;
        readonly ageMs: number;
      }
  );

interface CopyDue {
  /** Records of the log that the copy does not hold. */
  readonly recordsSince: number;
  /** Turns and studies that were finished after the copy. */
  readonly finishedSince: number;
  /** Something was recorded since, and the copy is a day old or lacks five finished turns and studies. */
  readonly isDue: boolean;
}

const DAY_MS = 86_400_000;
const MOST_FINISHED = 5;

/**
 * Age of the last copy this tablet made outside the browser; without one, of the first record of the shop here.
 *
 * @param shop records of the shop's stream, in any order
 * @param records how many records the log holds now
 * @param finished how many turns and studies were finished after the last copy
 */
export function copyAge(
  shop: readonly LogRecord[],
  { device, records, finished, now }: { device: string; records: number; finished: number; now: Stamp },
): CopyAge {
  const copy = lastCopy(shop, device);
  // The record that says so came after the copy; nothing is lost when the copy lacks it.
  const recordsSince = copy ? Math.max(0, records - copy.fact.records - 1) : records;
  const own = shop.filter((record) => record.device === device).map(({ stamp }) => stamp.wallMs);
  const sinceMs = copy?.stamp.wallMs ?? Math.min(now.wallMs, ...own);
  const ageMs = Math.max(0, now.wallMs - sinceMs);
  const due: CopyDue = {
    recordsSince,
    finishedSince: finished,
    isDue: recordsSince > 0 && (ageMs >= DAY_MS || finished >= MOST_FINISHED),
  };
  if (!copy) return { isCopied: false, ...due };
  return { isCopied: true, how: copy.fact.how, madeAt: copy.stamp, ageMs, ...due };
}
