import type { LedgerCategory } from '../domain/turn/ledger-category';
import type { Hatching } from './hatch-patterns';

/**
 * The time ledger as it looks everywhere: categories in the order in which they are read, work first and what nobody
 * can say last, each with a hatching of its own. Ink on paper alone, so that sunlight and a grey printer keep them
 * apart; blue and orange are left to ahead and behind.
 */
export const ledgerLook: readonly { readonly category: LedgerCategory; readonly hatching: Hatching }[] = [
  { category: 'cycle', hatching: 'solid' },
  { category: 'set-up', hatching: 'diagonal' },
  { category: 'rework', hatching: 'dots' },
  { category: 'stoppage', hatching: 'cross' },
  { category: 'called-away', hatching: 'level' },
  { category: 'planned-break', hatching: 'upright' },
  { category: 'unaccounted', hatching: 'blank' },
];
