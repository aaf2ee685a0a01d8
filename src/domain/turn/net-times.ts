import type { LedgerCategory } from './ledger-category';
import type { LedgerSpan } from './turn';

/**
 * The cycle time of each of some stretches: what the ledger has under `category` inside it. So a part has
 * exactly the time that the ledger counts as made on it, whatever was reclassified. Any other category likewise.
 *
 * @param stretches in order and without overlap, as the ledger is
 * @returns milliseconds, in the same order
 */
export function netTimes(
  ledger: readonly LedgerSpan[],
  stretches: readonly { readonly fromMs: number; readonly toMs: number }[],
  category: LedgerCategory = 'cycle',
): number[] {
  let place = 0;
  return stretches.map(({ fromMs, toMs }) => {
    let netMs = 0;
    while (place < ledger.length && ledger[place]!.fromMs < toMs) {
      const span = ledger[place]!;
      if (span.category === category) {
        netMs += Math.max(0, Math.min(span.toMs, toMs) - Math.max(span.fromMs, fromMs));
      }
      if (span.toMs > toMs) break;
      place += 1;
    }
    return netMs;
  });
}
