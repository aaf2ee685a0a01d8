import type { LedgerCategory } from '../turn/ledger-category';
import type { BreakAnswer, EnteredLater, StationFact } from './station-fact';

/** A part in hand and the target it is measured against, as they stood when it was chosen. */
export interface PartInHand {
  readonly part: string;
  readonly partCode: string;
  /** Milliseconds a part; null when the part has no target. */
  readonly targetMs: number | null;
  /** Parts that are finished together and tapped once; left out for one. */
  readonly partsPerTap?: number;
  /** What the target is; left out by older records, and where there is none. */
  readonly targetSource?: TargetSource;
  /** How it is tapped; left out for once a part, from the end of one to the end of the next. */
  readonly tapping?: Exclude<Tapping, 'each-part'>;
  /** Names of the elements in their order, where each of them is tapped. */
  readonly elements?: readonly string[];
}

/** A target is typed, a study's standard time, or what calendar and demand leave for a part. */
export type TargetSource = 'typed' | 'standard' | 'takt';

/** Once a part; at its start and its end, for the time that hands are on it; or at the end of every element. */
export type Tapping = 'each-part' | 'start-stop' | 'elements';

export type PartOutcome = 'good' | 'rework' | 'scrap';

/** What happens in a turn, an operator's stretch at a station. */
export type TurnFact =
  | ({
      readonly kind: 'turn-started';
      readonly starts: 'turn';
      readonly person: string;
      /** Nobody tapped: the turn was written down afterwards, and this is all of it. */
      readonly enteredLater?: EnteredLater;
      /** The steps of the browser's clock in milliseconds, where they are long (COARSE_STEP_MS). */
      readonly clockStepMs?: number;
    } & PartInHand)
  | ({
      readonly kind: 'part-done';
      /**
       * Time on this part, milliseconds, where it was not worked from tap to tap: a batch passes every
       * part of a rack several times. Without it the cycle is the time since the tap before.
       */
      readonly touchMs?: number;
    } & PartInHand)
  | ({
      readonly kind: 'part-changed';
      /** Time since the tap before stands apart until somebody says what it was; without it, it is the next part's. */
      readonly before?: 'asked';
    } & PartInHand)
  | {
      readonly kind: 'part-judged';
      /** Key of the part-done record. */
      readonly partDone: string;
      readonly outcome: PartOutcome;
      readonly defect?: string;
      /** Key of the stop with which its rework began: taken back with it. */
      readonly stoppage?: string;
    }
  /** Hands are on the next part from here on, where start and end are tapped. */
  | { readonly kind: 'part-begun' }
  /** The element in hand ends here; the last one of a part ends with the part. */
  | { readonly kind: 'element-done'; readonly element: string }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'resumed' }
  | {
      readonly kind: 'stoppage-explained';
      /** Key of the stopped record. */
      readonly stoppage: string;
      readonly reason: string;
      /** The shop's wording at that time; empty for a reason the tablet words itself. */
      readonly label: string;
      readonly category: Exclude<LedgerCategory, 'cycle' | 'unaccounted'>;
      /** Key of the part done that was made good in it, of this turn or of an earlier one. */
      readonly ofPart?: string;
      /** Who said so afterwards, and why where another reason stood there; left out at the station. */
      readonly by?: string;
      readonly why?: string;
    }
  | {
      readonly kind: 'stoppage-absorbed';
      /** Key of the stopped record. */
      readonly stoppage: string;
      /** How much of it cost no output: the machine, or the operator, worked on meanwhile. */
      readonly absorbedMs: number;
      /** Left out where it was said at the station. */
      readonly by?: string;
    }
  | { readonly kind: 'turn-ended' }
  /** The operator's own words about the turn. Later ones replace them; all stay in the log. */
  | { readonly kind: 'turn-noted'; readonly note: string }
  | ClockFact
  | StationFact
  | AnswerFact
  | CorrectionFact
  /** A tap taken back; with `by`, an answer or a correction, by whoever took it back. */
  | { readonly kind: 'undone'; readonly of: string; readonly by?: string };

/** What stopped time is put down to, as the shop words it at that time. */
export interface StoppedTime {
  readonly category: Exclude<LedgerCategory, 'cycle' | 'unaccounted'>;
  readonly reason: string;
  readonly label: string;
}

/**
 * Time before a change of part: set-up, the beginning of the next part, one more of the part before whose tap was
 * missed, or nothing that anybody wants to put down.
 */
export type BeforeChange = 'set-up' | 'next-part' | 'part-before' | 'left-out';

/**
 * What a part done stands for. The first piece after a set-up is made to be checked: a part done, and its time set-up.
 */
export type CycleJudgement = 'one-part' | 'two-parts' | 'interrupted' | 'first-off';

/** What a person says to a question about the taps. Without `by` it was said at the station. */
export type AnswerFact = { readonly by?: string } & (
  | {
      readonly kind: 'gap-explained';
      /** Key of the record with which the tablet was there again. */
      readonly gap: string;
      readonly as: 'work' | StoppedTime;
    }
  /** A tap, as of a bounce, of a key that was meant otherwise: it was a part, or it was none. */
  | { readonly kind: 'tap-counted'; readonly tap: string }
  | { readonly kind: 'tap-left-out'; readonly tap: string }
  | {
      readonly kind: 'cycle-judged';
      readonly partDone: string;
      readonly as: CycleJudgement;
    }
  /** What the time between the last part and a change of part was. */
  | { readonly kind: 'change-explained'; readonly change: string; readonly as: BeforeChange }
  /** The part was the right one, however its times lie; named by the first part done of its run. */
  | { readonly kind: 'part-confirmed'; readonly partDone: string }
  /** The same person as before, after a long gap. */
  | { readonly kind: 'person-confirmed'; readonly gap: string }
  | BreakAnswer
);

/** What a person puts right afterwards. It adds to the log and takes nothing away. */
export type CorrectionFact = { readonly by: string } & (
  | ({
      readonly kind: 'part-recoded';
      /** Keys of the part-done records. */
      readonly partDone: readonly string[];
      readonly why: string;
    } & PartInHand)
  | {
      readonly kind: 'person-corrected';
      readonly person: string;
      /** The stretch that was this person's, milliseconds since the turn began; without it, the whole turn. */
      readonly fromMs?: number;
      readonly toMs?: number;
      readonly why: string;
    }
  | {
      readonly kind: 'time-reclassified';
      /** Milliseconds since the turn began. */
      readonly fromMs: number;
      readonly toMs: number;
      readonly category: Exclude<LedgerCategory, 'unaccounted'>;
      readonly reason: string;
      readonly label: string;
      readonly why: string;
      /** In records of older releases, which wrote down too much; it says nothing. */
      readonly isAtStation?: boolean;
    }
  /** Kept and counted, but in no mean, with its cause; and back again. */
  | { readonly kind: 'part-set-aside'; readonly partDone: string; readonly cause: string }
  | { readonly kind: 'part-taken-back'; readonly partDone: string }
  /** A turn that was written down afterwards is taken away again: it stays in the log, and counts nowhere. */
  | { readonly kind: 'turn-withdrawn'; readonly why: string }
);

/** What the tablet's clocks did while a turn or a study was open. */
export type ClockFact =
  /** The monotonic clock stood still for this long while the tablet slept. */
  | { readonly kind: 'slept'; readonly sleptMs: number }
  /** The wall clock was set, forward (positive) or back. */
  | { readonly kind: 'clock-set'; readonly byMs: number }
  /** The wall clock crept away from the monotonic one by this much in a minute. */
  | { readonly kind: 'clock-drifted'; readonly byMs: number }
  | {
      /** The page is there again after it was gone. */
      readonly kind: 'page-opened';
      /** For how long, where the page before it had marked when it was last there; milliseconds. */
      readonly goneMs?: number;
    };
