/** Lots at the cell: what came, and what is free for the next operation. A stream holds those of one tablet's day. */
export type LotFact =
  | {
      readonly kind: 'lots-opened';
      readonly starts: 'lots';
      /** What was in the cell then, oldest first: so that a reader need not begin with the first day of all. */
      readonly inside?: readonly LotInside[];
    }
  | {
      readonly kind: 'lot-arrived';
      readonly parts: number;
      /** Its number, typed or scanned; empty for a lot that nobody named. */
      readonly lot: string;
    }
  | {
      readonly kind: 'lot-released';
      readonly parts: number;
      /** The lot it is of; empty: of whatever came first. */
      readonly lot: string;
    };

/** Parts of a lot that are in the cell. */
export interface LotInside {
  readonly lot: string;
  readonly parts: number;
  /** Wall clock, milliseconds. */
  readonly arrivedWallMs: number;
}
