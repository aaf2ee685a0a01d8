import { NOT_STATED, type Turn } from '../turn/turn';

/** Time stopped for one reason, planned breaks left out. */
export interface LostTime {
  readonly reason: string;
  /** The shop's own wording, the newest used; empty for a reason the tablet words. */
  readonly label: string;
  readonly count: number;
  readonly lostMs: number;
}

/** Time stopped by reason: longest first, what nobody explained last. An open stoppage counts to the last record. */
export function lostTime(turns: readonly Turn[]): LostTime[] {
  const byReason = new Map<string, LostTime>();
  for (const turn of [...turns].sort((a, b) => a.startedAt.wallMs - b.startedAt.wallMs)) {
    for (const { reason, label, category, fromMs, toMs } of turn.stoppages) {
      if (category === 'planned-break') continue;
      const before = byReason.get(reason);
      byReason.set(reason, {
        reason,
        label: label || (before?.label ?? ''),
        count: (before?.count ?? 0) + 1,
        lostMs: (before?.lostMs ?? 0) + (toMs ?? turn.lastAtMs) - fromMs,
      });
    }
  }
  const isUnstated = ({ reason }: LostTime) => Number(reason === NOT_STATED);
  return [...byReason.values()].sort((a, b) => isUnstated(a) - isUnstated(b) || b.lostMs - a.lostMs);
}
