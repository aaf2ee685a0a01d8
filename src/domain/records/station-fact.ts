import type { WallStretch } from '../shop/shift-calendar';

/** Who is at a station in the course of a turn, and what the shop's calendar says of it. */
export type StationFact =
  /** From this tap on it is somebody else: the part in hand is shared by the two. */
  | { readonly kind: 'person-changed'; readonly person: string }
  | {
      /** What the calendar planned for a turn when it began. A later one replaces it. */
      readonly kind: 'shift-planned';
      readonly breaks: readonly WallStretch[];
      /** Wall clock at the end of the shift, milliseconds; null when the turn began in none. */
      readonly endsWallMs: number | null;
    };

/** Whether a planned break that a part spans was taken. */
export interface BreakAnswer {
  readonly kind: 'break-answered';
  readonly partDone: string;
  /** The stretch that was asked about, milliseconds since the turn began. */
  readonly fromMs: number;
  readonly toMs: number;
  readonly as: 'break' | 'work';
}
