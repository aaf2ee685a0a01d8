import { isGood } from '../turn/earned-time';
import type { LedgerCategory } from '../turn/ledger-category';
import { ledgerTotals } from '../turn/ledger-totals';
import type { Turn } from '../turn/turn';
import { type AgainstTarget, againstTarget } from './against-target';
import { ledgerSeconds } from './ledger-seconds';
import { type LostTime, lostTime } from './lost-time';
import { lostUnknown } from './lost-unknown';
import { type PartOfDay, partsOfDay } from './part-of-day';

/** A day as the foreman reads it. Times in milliseconds. */
export interface DayReview {
  /** As 2026-03-02, where the turns began. */
  readonly day: string;
  readonly turns: number;
  /** Turns that had not ended: their figures reach to their last record. */
  readonly openTurns: number;
  /** Parts in the order of their codes. */
  readonly parts: readonly PartOfDay[];
  /** Parts finished, whatever became of them. */
  readonly done: number;
  /** Of these, parts that count in means: no question is open about them, and nobody set them aside. */
  readonly counted: number;
  /** Of these, parts that were written down afterwards, without a tap. */
  readonly entered: number;
  /** Good at last: good the first time, and reworked. */
  readonly good: number;
  readonly rework: number;
  readonly scrap: number;
  /** From the first record of each turn to its last, added up. */
  readonly elapsedMs: number;
  /** The same time by category: they add up to it. */
  readonly totals: Readonly<Record<LedgerCategory, number>>;
  /** The same in whole seconds, to be printed: they add up, and agree with the operator's own record. */
  readonly seconds: Readonly<Record<LedgerCategory, number>>;
  /** Time lost by reason, longest first, not stated last; set-up and planned breaks left out. */
  readonly lost: readonly LostTime[];
  /** Turns of which nobody knows what was lost: entered later, with nothing told. */
  readonly lostUnknown: number;
  /** All parts of the day against the targets they carried; null when none had one. */
  readonly against: AgainstTarget | null;
}

/** One day from the turns that began on it. A day without parts, or without turns, is empty and never an error. */
export function reviewDay(day: string, turns: readonly Turn[]): DayReview {
  const cycles = turns.flatMap((turn) => turn.cycles);
  return {
    day,
    turns: turns.filter(({ isWithdrawn }) => !isWithdrawn).length,
    openTurns: turns.filter(({ status }) => status !== 'ended').length,
    parts: partsOfDay(cycles),
    done: cycles.length,
    counted: cycles.filter(({ isCounted }) => isCounted).length,
    entered: cycles.filter(({ isEntered }) => isEntered).length,
    good: cycles.filter(isGood).length,
    rework: cycles.filter(({ outcome }) => outcome === 'rework').length,
    scrap: cycles.filter(({ outcome }) => outcome === 'scrap').length,
    elapsedMs: turns.reduce((sum, { lastAtMs }) => sum + lastAtMs, 0),
    totals: ledgerTotals(turns.flatMap((turn) => turn.ledger)),
    seconds: ledgerSeconds(turns),
    lost: lostTime(turns),
    lostUnknown: lostUnknown(turns),
    against: againstTarget(cycles),
  };
}
