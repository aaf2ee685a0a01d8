import type { LedgerCategory } from './ledger-category';
import type { LedgerSpan } from './turn';

/** Milliseconds in each category; their sum is the elapsed time of the ledger. */
export function ledgerTotals(ledger: readonly LedgerSpan[]): Record<LedgerCategory, number> {
  const totals: Record<LedgerCategory, number> = {
    cycle: 0,
    'set-up': 0,
    stoppage: 0,
    rework: 0,
    'planned-break': 0,
    'called-away': 0,
    unaccounted: 0,
  };
  for (const { category, fromMs, toMs } of ledger) totals[category] += toMs - fromMs;
  return totals;
}
