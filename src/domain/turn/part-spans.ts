import { netTimes } from './net-times';
import { ownOfTurn } from './own-of-turn';
import type { Turn } from './turn';

/** What one part took of the day: its work, and what was lost while it was in hand. Milliseconds. */
export interface PartSpan {
  readonly workMs: number;
  /** Stoppages, set-up, rework, called away, unaccounted; planned breaks are in the calendar and not here. */
  readonly lostMs: number;
  readonly isGood: boolean;
  /** Its work says something about the pace; what of a part that does not count is lost, and its kind, do all the same. */
  readonly isCounted: boolean;
  readonly part: string;
  /** Null without one. */
  readonly targetMs: number | null;
}

const lost = ['stoppage', 'set-up', 'rework', 'called-away', 'unaccounted'] as const;

/** The parts of whoever is there now as spans of time, in order; without those of which something is still open. */
export function partSpans(turn: Turn): PartSpan[] {
  const cycles = ownOfTurn(turn).cycles.filter(({ doubt, isEntered }) => doubt === null && !isEntered);
  const workMs = netTimes(turn.ledger, cycles);
  const lostMs = lost.map((category) => netTimes(turn.ledger, cycles, category));
  return cycles.map(({ outcome, part, targetMs, isCounted }, place) => ({
    part,
    targetMs,
    isCounted,
    workMs: workMs[place]!,
    lostMs: lostMs.reduce((sum, each) => sum + each[place]!, 0),
    isGood: outcome !== 'scrap',
  }));
}
