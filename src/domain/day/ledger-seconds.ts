import type { LedgerCategory } from '../turn/ledger-category';
import type { Turn } from '../turn/turn';
import { wholeSeconds } from '../turn/whole-seconds';

/**
 * Whole seconds of some turns in each category, stretch by stretch, as the operator's own record counts them. So
 * the categories add up, as printed, to the elapsed time, the reasons of a category to the category, and the
 * foreman reads the very figures that the operator reads.
 */
export function ledgerSeconds(turns: readonly Pick<Turn, 'ledger'>[]): Record<LedgerCategory, number> {
  const seconds: Record<LedgerCategory, number> = {
    cycle: 0,
    'set-up': 0,
    stoppage: 0,
    rework: 0,
    'planned-break': 0,
    'called-away': 0,
    unaccounted: 0,
  };
  for (const { ledger } of turns) for (const span of ledger) seconds[span.category] += wholeSeconds(span);
  return seconds;
}
