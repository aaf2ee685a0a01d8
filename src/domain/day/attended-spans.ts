import { isMeal } from '../shop/is-meal';
import type { CountedBreak } from '../shop/shift-calendar';
import type { LedgerSpan, Turn } from '../turn/turn';

/** A break of the shift, milliseconds since the turn began: one that began before it has a negative start. */
export interface BreakStretch extends CountedBreak {
  readonly fromMs: number;
  readonly toMs: number;
}

/** A stretch of a turn that was attended: the ledger's own, cut where a break of the shift begins or ends. */
export interface AttendedSpan extends LedgerSpan {
  /** Planned to be worked: no break of the shift lies over it. */
  readonly isWorking: boolean;
}

/**
 * The attended time of a turn: what its ledger holds, less the meal breaks of its shift. Without a calendar the
 * whole turn was attended, and what was stopped for a planned break is its break. No figure here is one of hours worked.
 */
export function attendedSpans(turn: Turn, breaks: readonly BreakStretch[]): AttendedSpan[] {
  if (breaks.length === 0) {
    return turn.ledger.map((span) => ({ ...span, isWorking: span.category !== 'planned-break' }));
  }
  const edges = [...new Set(breaks.flatMap(({ fromMs, toMs }) => [fromMs, toMs]))].sort((a, b) => a - b);
  return turn.ledger.flatMap((span) => {
    const inside = edges.filter((edge) => edge > span.fromMs && edge < span.toMs);
    const cuts = [span.fromMs, ...inside, span.toMs];
    return cuts.slice(1).flatMap((toMs, place): AttendedSpan[] => {
      const fromMs = cuts[place]!;
      const over = breaks.filter((each) => each.fromMs <= fromMs && each.toMs >= toMs);
      if (over.some((each) => isMeal(each, each.toMs - each.fromMs))) return [];
      return [{ ...span, fromMs, toMs, isWorking: over.length === 0 }];
    });
  });
}
