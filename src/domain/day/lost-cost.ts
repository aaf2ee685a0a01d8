import type { LedgerCategory } from '../turn/ledger-category';
import { NOT_STATED } from '../turn/turn';
import type { TurnToSummarise } from './summarise-day';

/** Time lost for one reason, and what it cost in output. */
export interface LostCost {
  readonly reason: string;
  /** The shop's own wording, the newest used; empty for a reason the tablet words. */
  readonly label: string;
  readonly count: number;
  readonly lostMs: number;
  /** The part of it in which no output was made: what somebody said was absorbed is left out. */
  readonly costMs: number;
}

/** Set-up and planned breaks are time stopped too, but nobody lost it: they have lines of their own in the ledger. */
const notLost: ReadonlySet<LedgerCategory> = new Set([
  'cycle',
  'unaccounted',
  'set-up',
  'planned-break',
  'rework',
]);

/**
 * Lost time by reason in minutes and in output cost, dearest first, what nobody explained last.
 *
 * Formula: cost of a stoppage = its length − what was absorbed of it
 *   absorbed  time, milliseconds, in which the machine or the operator worked on, as somebody at the station said
 * A stoppage of which nobody said anything costs its whole length. What was taken out of it by a correction is
 * lost no more, and takes its share of the cost along. One that ran into a meal break counts whole, as it was tapped.
 */
export function lostCosts(turns: readonly TurnToSummarise[]): LostCost[] {
  const byReason = new Map<string, LostCost>();
  for (const { turn, absorbedMs } of turns) {
    for (const { reason, label, category, fromMs, toMs } of turn.ledger) {
      if (notLost.has(category)) continue;
      const before = byReason.get(reason);
      const of = turn.stoppages.find((each) => each.fromMs <= fromMs && (each.toMs ?? turn.lastAtMs) >= toMs);
      const lengthMs = of ? (of.toMs ?? turn.lastAtMs) - of.fromMs : 0;
      const absorbed = of && lengthMs > 0 ? Math.min(1, (absorbedMs.get(of.key) ?? 0) / lengthMs) : 0;
      byReason.set(reason, {
        reason,
        label: label || (before?.label ?? ''),
        count: (before?.count ?? 0) + 1,
        lostMs: (before?.lostMs ?? 0) + toMs - fromMs,
        costMs: (before?.costMs ?? 0) + (toMs - fromMs) * (1 - absorbed),
      });
    }
  }
  return inOrderOfCost([...byReason.values()]);
}

/** The same reasons of several days, added up. */
export function addedUp(days: readonly { readonly lost: readonly LostCost[] }[]): LostCost[] {
  const byReason = new Map<string, LostCost>();
  for (const { lost } of days) {
    for (const each of lost) {
      const before = byReason.get(each.reason);
      byReason.set(each.reason, {
        reason: each.reason,
        label: each.label || (before?.label ?? ''),
        count: (before?.count ?? 0) + each.count,
        lostMs: (before?.lostMs ?? 0) + each.lostMs,
        costMs: (before?.costMs ?? 0) + each.costMs,
      });
    }
  }
  return inOrderOfCost([...byReason.values()]);
}

function inOrderOfCost(lost: LostCost[]): LostCost[] {
  const isUnstated = ({ reason }: LostCost) => Number(reason === NOT_STATED);
  return lost.sort((a, b) => isUnstated(a) - isUnstated(b) || b.costMs - a.costMs);
}
