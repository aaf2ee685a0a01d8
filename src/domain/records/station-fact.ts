import type { WallBreak } from '../shop/shift-calendar';
import type { Stamp } from './stamp';
import type { PartInHand, StoppedTime } from './turn-fact';

/** Who is at a station in the course of a turn, what the shop's calendar says of it, and what was counted there. */
export type StationFact =
  /** From this tap on it is somebody else: the part in hand is shared by the two. */
  | { readonly kind: 'person-changed'; readonly person: string }
  | {
      /** What the calendar planned for a turn when it began. A later one replaces it. */
      readonly kind: 'shift-planned';
      readonly breaks: readonly WallBreak[];
      /** Wall clock at the end of the shift, milliseconds; null when the turn began in none. */
      readonly endsWallMs: number | null;
    }
  /** So many parts of this person from here on are made while learning; 0 ends it. */
  | { readonly kind: 'learning-noted'; readonly person: string; readonly parts: number }
  /** Good parts that are wanted in this turn; null takes it back. A later one replaces it. */
  | { readonly kind: 'parts-wanted'; readonly parts: number | null }
  /** Parts of the turn as somebody counted them by hand. Without `by` it was said at the station. */
  | { readonly kind: 'parts-counted'; readonly count: number; readonly by?: string };

/** A turn that was written down afterwards, without a tap. Its start carries all that is known of it. */
export interface EnteredLater {
  /** When it was written down; the stamp of the record is when the turn is said to have begun. */
  readonly at: Stamp;
  readonly by: string;
  readonly why: string;
  readonly lastedMs: number;
  readonly lines: readonly EnteredLine[];
  /** Time that work stood still, by reason. */
  readonly stops: readonly EnteredStop[];
}

export interface EnteredStop extends StoppedTime {
  readonly lostMs: number;
  /** When it began, milliseconds since the turn did; absent where it is known how long it was, and not when. */
  readonly fromMs?: number;
}

/** Parts of one kind, as counted. */
export interface EnteredLine extends PartInHand {
  readonly done: number;
  /** Of these. */
  readonly rework: number;
  readonly scrap: number;
}

/** Whether a planned break that a part spans was taken. */
export interface BreakAnswer {
  readonly kind: 'break-answered';
  readonly partDone: string;
  /** The stretch that was asked about, milliseconds since the turn began. */
  readonly fromMs: number;
  readonly toMs: number;
  readonly as: 'break' | 'work';
}
