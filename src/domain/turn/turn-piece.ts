import type { LedgerSpan } from './turn';
import type { TurnRemarks } from './turn-remarks';

/** Time of the part in hand. `work` is cycle time once the part is done, unaccounted if it never is. */
export type Piece = { readonly isWork: boolean; readonly span: LedgerSpan };

/** A piece by what was said of it: work, or a stop by its reason; unaccounted as long as nothing was said. */
export function turnPiece(said: ReturnType<TurnRemarks['gaps']['get']>, fromMs: number, toMs: number): Piece {
  const stopped = said === 'work' ? undefined : said;
  const { category, reason, label } = stopped ?? { category: 'unaccounted' as const, reason: '', label: '' };
  return { isWork: said === 'work', span: { category, reason, label, fromMs, toMs } };
}
