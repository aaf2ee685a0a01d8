import type { LedgerCategory } from '../../domain/turn/ledger-category';
import { ownRecord as own } from '../../i18n/en/own-record';

/** Milliseconds of a turn in one category. */
export type CategoryTime = readonly [category: LedgerCategory, ms: number];

/** Narrower than this no word stands in it; the table below has them all. */
const WORDED_FROM = 0.2;

/** One bar for the whole turn, each category with a pattern of its own beside its colour. */
export function LedgerBar({ spent }: { spent: readonly CategoryTime[] }) {
  const totalMs = spent.reduce((sum, [, ms]) => sum + ms, 0);
  return (
    <div class="pace-ledger" aria-hidden="true">
      {spent.map(([category, ms]) => (
        <div key={category} class={`pace-ledger-span is-${category}`} style={{ flexGrow: ms / totalMs }}>
          {ms / totalMs >= WORDED_FROM && <span>{own.categories[category]}</span>}
        </div>
      ))}
    </div>
  );
}
