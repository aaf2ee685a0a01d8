import type { LedgerSpan, Stoppage } from './turn';

/** A stoppage in the ledger, up to this moment. */
export function stoppedSpan({ category, reason, label, fromMs }: Stoppage, toMs: number): LedgerSpan {
  return { category, reason, label, fromMs, toMs };
}
