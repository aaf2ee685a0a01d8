import { layOver } from './lay-over';
import type { LedgerSpan } from './turn';

/** A ledger in which a stretch stands under another category; every millisecond stays where it is. */
export function reclassifyLedger(
  ledger: readonly LedgerSpan[],
  { fromMs, toMs, category, reason, label }: LedgerSpan,
): LedgerSpan[] {
  return layOver(ledger, { category, reason, label, fromMs, toMs });
}
