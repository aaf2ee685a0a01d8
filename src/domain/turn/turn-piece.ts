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

/** Pieces of a part that nobody had hands on from a moment on: what was work after it is nobody's. */
export function withHandsOff(pieces: readonly Piece[], offAtMs: number): Piece[] {
  return pieces.flatMap((piece) => {
    const { fromMs, toMs } = piece.span;
    if (!piece.isWork || toMs <= offAtMs) return piece;
    const off = turnPiece(undefined, Math.max(fromMs, offAtMs), toMs);
    return fromMs < offAtMs ? [turnPiece('work', fromMs, offAtMs), off] : off;
  });
}

export function workMs(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { isWork, span }) => sum + (isWork ? span.toMs - span.fromMs : 0), 0);
}
