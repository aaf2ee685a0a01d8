import type { LedgerSpan } from './turn';

/**
 * A ledger in which a stretch stands under another category: spans are split where it begins and ends, and
 * every millisecond stays where it is.
 */
export function reclassifyLedger(
  ledger: readonly LedgerSpan[],
  { fromMs, toMs, category, reason, label }: LedgerSpan,
): LedgerSpan[] {
  return ledger.flatMap((span) => {
    const from = Math.max(span.fromMs, fromMs);
    const to = Math.min(span.toMs, toMs);
    if (from >= to) return [span];
    const pieces: LedgerSpan[] = [
      { ...span, toMs: from },
      { category, reason, label, fromMs: from, toMs: to },
      { ...span, fromMs: to },
    ];
    return pieces.filter((piece) => piece.toMs > piece.fromMs);
  });
}
