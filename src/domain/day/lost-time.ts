import type { LedgerCategory } from '../turn/ledger-category';
import { NOT_STATED, type Turn } from '../turn/turn';
import { wholeSeconds } from '../turn/whole-seconds';

/** Time lost for one reason. */
export interface LostTime {
  readonly reason: string;
  /** The shop's own wording, the newest used; empty for a reason the tablet words. */
  readonly label: string;
  readonly count: number;
  readonly lostMs: number;
  /** The same in whole seconds, to be printed: with the others they add up to their categories in the ledger. */
  readonly seconds: number;
}

/** Set-up and planned breaks are time stopped too, but nobody lost it: they have lines of their own in the ledger. */
const notLost: ReadonlySet<LedgerCategory> = new Set(['cycle', 'unaccounted', 'set-up', 'planned-break']);

/**
 * Time lost by reason, from the ledger, so that what was answered and reclassified counts where it was put:
 * longest first, what nobody explained last. An open stoppage counts to the last record.
 */
export function lostTime(turns: readonly Turn[]): LostTime[] {
  const byReason = new Map<string, LostTime>();
  for (const turn of [...turns].sort((a, b) => a.startedAt.wallMs - b.startedAt.wallMs)) {
    for (const { reason, label, category, fromMs, toMs } of turn.ledger) {
      if (notLost.has(category)) continue;
      const before = byReason.get(reason);
      byReason.set(reason, {
        reason,
        label: label || (before?.label ?? ''),
        count: (before?.count ?? 0) + 1,
        lostMs: (before?.lostMs ?? 0) + toMs - fromMs,
        seconds: (before?.seconds ?? 0) + wholeSeconds({ fromMs, toMs }),
      });
    }
  }
  const isUnstated = ({ reason }: LostTime) => Number(reason === NOT_STATED);
  return [...byReason.values()].sort((a, b) => isUnstated(a) - isUnstated(b) || b.lostMs - a.lostMs);
}
