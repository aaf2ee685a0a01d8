import type { Stamp } from '../records/stamp';
import type { EnteredLater } from '../records/station-fact';
import type { CycleJudgement, PartInHand, PartOutcome } from '../records/turn-fact';
import type { Doubt, DoubtKind } from './doubt';
import type { Gap } from './find-gaps';
import type { LedgerCategory } from './ledger-category';
import type { Step } from './part-tapped';
import type { PersonSpan } from './people-line';
import type { PlannedShift } from './planned-shift';

/** An operator's stretch at a station, as its records tell it. All times in milliseconds. */
export interface Turn {
  readonly id: string;
  /** Who is there, or was there last; as corrected, where somebody corrected it. */
  readonly person: string;
  /** Who was there all through the turn, gapless and in order; the last span has no end. */
  readonly people: readonly PersonSpan[];
  /** What the shop's calendar had planned when it began. */
  readonly planned: PlannedShift;
  /** What the person who is there makes next is made while learning: there is no position. */
  readonly isLearning: boolean;
  /** Parts as counted by hand; null when nobody did. */
  readonly countedParts: number | null;
  /** The operator's own words about it; empty when there are none. */
  readonly note: string;
  /** When, by whom and why the turn was written down afterwards; null for one that was tapped. */
  readonly enteredLater: Pick<EnteredLater, 'at' | 'by' | 'why'> | null;
  /** One that was written down afterwards, and taken away again: nothing of it counts. */
  readonly isWithdrawn: boolean;
  readonly startedAt: Stamp;
  readonly status: 'running' | 'stopped' | 'ended';
  readonly inHand: PartInHand;
  readonly cycles: readonly Cycle[];
  /** The whole turn up to the last record, gapless and in order. */
  readonly ledger: readonly LedgerSpan[];
  /** Stoppages in order; the last one is open while the turn is stopped. */
  readonly stoppages: readonly Stoppage[];
  /** Gaps while work ran, answered or not. */
  readonly gaps: readonly Gap[];
  /** Stretches between the last part and a change of part, of which it was asked what they were. */
  readonly changes: readonly Stretch[];
  /** What nobody has answered yet, in order of time. */
  readonly doubts: readonly Doubt[];
  /** First parts done of the runs whose part somebody called right. */
  readonly confirmedParts: ReadonlySet<string>;
  /** Time since the turn began at which the part in hand was begun, and time stopped since then. */
  readonly partBeganAtMs: number;
  readonly partStoppedMs: number;
  /** Hands are on the part in hand; false only between parts whose start is tapped. */
  readonly isPartBegun: boolean;
  /** Elements of the part in hand that have ended, where they are tapped. */
  readonly stepsDone: number;
  /** Good parts that are wanted in the turn; null when nobody said. */
  readonly wantedParts: number | null;
  /** Of the part in hand: time of which nobody said yet whether it was work. */
  readonly partGapMs: number;
  /** The record that Undo would take back; null when there is none. */
  readonly undoable: {
    readonly key: string;
    readonly kind: string;
    readonly atMs: number;
    readonly outcome?: PartOutcome;
  } | null;
  /** The last record and its place in the turn; of a turn that ended, its end. */
  readonly lastStamp: Stamp;
  readonly lastAtMs: number;
  /** The last record that a person made, and not the tablet by itself. */
  readonly lastByHandAt: Stamp;
}

/** One part done: from the tap before it to its own. */
export interface Cycle extends PartInHand {
  /** Key of the part-done record; with /1, /2 … for the others of several parts that one tap stands for. */
  readonly key: string;
  readonly doneAt: Stamp;
  /** Who finished it. */
  readonly person: string;
  /** Somebody else began it: in the part's means, and in no person's own. */
  readonly isShared: boolean;
  readonly fromMs: number;
  readonly toMs: number;
  /** Without what was stopped in between, and without gaps that nobody called work. */
  readonly netMs: number;
  readonly outcome: PartOutcome;
  readonly defect: string;
  /** Spent in this turn on making it good afterwards; in no cycle. */
  readonly reworkMs: number;
  /** In means, spreads and positions. A part that is not counted there is a part done all the same. */
  readonly isCounted: boolean;
  /** Made while learning: in no mean. */
  readonly isLearning: boolean;
  /** Written down afterwards, without a tap: its time is a share of the turn's, and in no mean. */
  readonly isEntered: boolean;
  /** How many parts were made at once; such parts are never averaged with others. */
  readonly together: number;
  /** The open question about it; null when there is none. */
  readonly doubt: DoubtKind | null;
  /** What a person said that its tap stands for; null when nobody did. */
  readonly judgedAs: CycleJudgement | null;
  /** Where its elements ended, when they were tapped; empty otherwise. */
  readonly steps: readonly Step[];
  /** Why a person took it out of the means; empty when nobody did. */
  readonly setAside: string;
}

export interface Stretch {
  /** Key of the record that it is named by. */
  readonly key: string;
  readonly fromMs: number;
  readonly toMs: number;
}

export interface LedgerSpan {
  readonly category: LedgerCategory;
  /** Reason's id for time that was stopped; empty otherwise, and 'not-stated' until it is explained. */
  readonly reason: string;
  /** The shop's own wording of the reason; empty for one the tablet words. */
  readonly label: string;
  readonly fromMs: number;
  readonly toMs: number;
}

export interface Stoppage {
  /** Key of the stopped record. */
  readonly key: string;
  readonly fromMs: number;
  /** Null while it lasts. */
  readonly toMs: number | null;
  readonly reason: string;
  readonly label: string;
  readonly category: LedgerCategory;
  /** Key of the part done that was made good in it; empty when none was named. */
  readonly ofPart: string;
}

/** The reason of a stoppage that nobody explained: kept visible, neutral, never guessed. */
export const NOT_STATED = 'not-stated';
