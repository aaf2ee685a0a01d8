import { netTimes } from './net-times';
import type { Cycle, LedgerSpan, Stoppage } from './turn';

/**
 * Parts with the time that went into making them good afterwards: what the ledger has as rework in the stoppages that
 * are tied to each. It belongs to the part's first record and is in no cycle, so the part's own time stays what it was.
 */
export function withRework(
  cycles: readonly Cycle[],
  stoppages: readonly Stoppage[],
  ledger: readonly LedgerSpan[],
): Cycle[] {
  const spent = new Map<string, number>();
  for (const { ofPart, fromMs, toMs } of stoppages) {
    if (ofPart === '') continue;
    const stretch = { fromMs, toMs: toMs ?? Number.POSITIVE_INFINITY };
    const [reworkMs] = netTimes(ledger, [stretch], 'rework');
    spent.set(ofPart, (spent.get(ofPart) ?? 0) + reworkMs!);
  }
  if (spent.size === 0) return [...cycles];
  return cycles.map((cycle) => ({ ...cycle, reworkMs: spent.get(cycle.key) ?? 0 }));
}
