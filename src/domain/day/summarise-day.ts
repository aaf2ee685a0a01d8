import type { LedgerCategory } from '../turn/ledger-category';
import { ledgerTotals } from '../turn/ledger-totals';
import type { Turn } from '../turn/turn';
import { type AgainstTarget, againstTarget } from './against-target';
import { type AttendedSpan, attendedSpans, type BreakStretch } from './attended-spans';
import { type LostCost, lostCosts } from './lost-cost';
import { lostUnknown } from './lost-unknown';
import { type PartAccount, partAccounts } from './part-account';

/** A turn with what a summary needs beside it. */
export interface TurnToSummarise {
  readonly turn: Turn;
  /** Of stoppages, by the key of the stopped record. */
  readonly absorbedMs: ReadonlyMap<string, number>;
  /** Of its shift; none when the shop has no calendar. */
  readonly breaks: readonly BreakStretch[];
}

export interface AttendedTurn extends TurnToSummarise {
  readonly spans: readonly AttendedSpan[];
}

/** A day in sums, small enough to be kept for years. Times in milliseconds. */
export interface DaySummary {
  /** As 2026-03-02, where the turns began. */
  readonly day: string;
  readonly turns: number;
  readonly openTurns: number;
  /** In the order of their codes. */
  readonly parts: readonly PartAccount[];
  readonly done: number;
  readonly counted: number;
  /** Good at last: good the first time, and reworked. */
  readonly good: number;
  readonly firstTime: number;
  readonly rework: number;
  readonly scrap: number;
  /** Without the meal breaks of the shift, over all turns. */
  readonly attendedMs: number;
  /** The same without the rest breaks. */
  readonly workingMs: number;
  /** The attended time by category: they add up to it. */
  readonly totals: Readonly<Record<LedgerCategory, number>>;
  readonly setUps: number;
  /** Σ target of the parts good at last, and set-ups × their standard. */
  readonly earnedMs: number;
  /** Good parts without a target: with any, the earned time is not all of it. */
  readonly untargeted: number;
  /** All counted parts against what the good ones earned; null when none did. */
  readonly against: AgainstTarget | null;
  /** Dearest first, not stated last. */
  readonly lost: readonly LostCost[];
  /** Turns of which nobody knows what was lost: entered later, with nothing told. */
  readonly lostUnknown: number;
}

/**
 * A day from the turns that began on it. A day without parts, or without turns, is empty and never an error.
 *
 * @param setUpStandardMs what a set-up earns, milliseconds; null when the shop set nothing
 */
export function summariseDay(
  day: string,
  turns: readonly TurnToSummarise[],
  setUpStandardMs: number | null,
): DaySummary {
  const attended = turns.map((of): AttendedTurn => ({ ...of, spans: attendedSpans(of.turn, of.breaks) }));
  const spans = attended.flatMap((of) => of.spans);
  const parts = partAccounts(attended);
  const setUps = attended.reduce((sum, of) => sum + setUpsIn(of.spans), 0);
  const of = (pick: (part: PartAccount) => number) => parts.reduce((sum, part) => sum + pick(part), 0);
  const lengthMs = (those: readonly AttendedSpan[]) =>
    those.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0);
  return {
    day,
    turns: turns.filter(({ turn }) => !turn.isWithdrawn).length,
    openTurns: turns.filter(({ turn }) => turn.status !== 'ended').length,
    parts,
    done: of(({ n }) => n),
    counted: of(({ counted }) => counted),
    good: of(({ good, rework }) => good + rework),
    firstTime: of(({ good }) => good),
    rework: of(({ rework }) => rework),
    scrap: of(({ scrap }) => scrap),
    attendedMs: lengthMs(spans),
    workingMs: lengthMs(spans.filter(({ isWorking }) => isWorking)),
    totals: ledgerTotals(spans),
    setUps,
    earnedMs: of(({ earnedMs }) => earnedMs) + setUps * (setUpStandardMs ?? 0),
    untargeted: of(({ untargeted }) => untargeted),
    against: againstTarget(turns.flatMap(({ turn }) => turn.cycles)),
    lost: lostCosts(attended),
    lostUnknown: lostUnknown(turns.map(({ turn }) => turn)),
  };
}

/** A set-up that a break goes through is one. */
function setUpsIn(spans: readonly AttendedSpan[]): number {
  return spans.filter(
    ({ category }, place) => category === 'set-up' && spans[place - 1]?.category !== 'set-up',
  ).length;
}
