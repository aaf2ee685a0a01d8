import type { PartInHand } from '../records/turn-fact';

/** A question that the taps leave open: something is suggested, a person decides. Times in milliseconds. */
export type Doubt = {
  /** Key of the record that the answer names. */
  readonly key: string;
  /** Since the turn began. */
  readonly fromMs: number;
  readonly toMs: number;
} & (
  | {
      /** The tablet slept, or the page was gone: was it work? */
      readonly kind: 'gap';
      readonly suggestion: 'slept' | 'page-gone';
    }
  | {
      /** A tap so soon after the one before that no part can have been made: kept, and no cycle. */
      readonly kind: 'second-tap';
      readonly suggestion: 'no-part';
    }
  | {
      /** About twice as long as its neighbours: was a tap missed? */
      readonly kind: 'two-parts';
      readonly suggestion: { readonly eachMs: number; readonly together: number };
    }
  | {
      /** Several times as long as its neighbours: was a stop forgotten in it? */
      readonly kind: 'long-part';
      readonly suggestion: { readonly usualMs: number };
    }
  | {
      /** Time between the last part and a change of part: what was it? Nothing is suggested; stops are not asked about. */
      readonly kind: 'before-change';
      readonly suggestion: { readonly from: PartInHand; readonly to: PartInHand; readonly workedMs: number };
    }
  | {
      /** A planned break lies in the part, and nobody tapped: was it taken? The stretch is the break's. */
      readonly kind: 'planned-break';
      readonly suggestion: 'break';
    }
  | {
      /** A run of parts that fits the target of another part. */
      readonly kind: 'another-part';
      readonly suggestion: { readonly fits: PartInHand; readonly partsDone: readonly string[] };
    }
  | {
      /** Nobody was there for a long time, or the shift has ended: is it still the same person? */
      readonly kind: 'same-person';
      readonly suggestion: { readonly person: string; readonly isShiftEnd?: boolean };
    }
);

export type DoubtKind = Doubt['kind'];
