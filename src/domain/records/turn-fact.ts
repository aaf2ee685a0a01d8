import type { LedgerCategory } from '../turn/ledger-category';

/** A part in hand and the target it is measured against, as they stood when it was chosen. */
export interface PartInHand {
  readonly part: string;
  readonly partCode: string;
  /** Milliseconds a part; null when the part has no target. */
  readonly targetMs: number | null;
}

export type PartOutcome = 'good' | 'rework' | 'scrap';

/** What happens in a turn, an operator's stretch at a station. */
export type TurnFact =
  | ({ readonly kind: 'turn-started'; readonly starts: 'turn'; readonly person: string } & PartInHand)
  | ({
      readonly kind: 'part-done';
      /**
       * Time on this part, milliseconds, where it was not worked from tap to tap: a batch passes every
       * part of a rack several times. Without it the cycle is the time since the tap before.
       */
      readonly touchMs?: number;
    } & PartInHand)
  | ({ readonly kind: 'part-changed' } & PartInHand)
  | {
      readonly kind: 'part-judged';
      /** Key of the part-done record. */
      readonly partDone: string;
      readonly outcome: PartOutcome;
      readonly defect?: string;
    }
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
    }
  | { readonly kind: 'turn-ended' }
  | ClockFact
  | { readonly kind: 'undone'; readonly of: string };

/** What the tablet's clocks did while a turn or a study was open. */
export type ClockFact =
  /** The monotonic clock stood still for this long while the tablet slept. */
  | { readonly kind: 'slept'; readonly sleptMs: number }
  /** The wall clock was set, forward (positive) or back. */
  | { readonly kind: 'clock-set'; readonly byMs: number };
