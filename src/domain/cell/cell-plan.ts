import type { CellWork } from './cell-work';

/** What stops the cell by chance, as the shop recorded it. */
export interface StopCause {
  readonly reason: string;
  /** The shop's wording; empty for a reason the tablet words itself. */
  readonly label: string;
  /** The machine stands; otherwise the operator does, and the machine runs its cycle to the end. */
  readonly holdsMachine: boolean;
  /** Mean working time from one to the next, milliseconds. */
  readonly everyMs: number;
  /** How long it lasted, each time. */
  readonly lengthsMs: readonly number[];
}

/** How parts come to the cell and leave it. */
export interface LotSizes {
  /** Parts that arrive together. */
  readonly arrivalLot: number;
  /** Parts left when the next lot arrives. */
  readonly refillAt: number;
  /** Parts that leave together. */
  readonly trolley: number;
}

/** A cell as it is simulated. */
export interface CellPlan extends LotSizes {
  readonly work: CellWork;
  readonly machines: number;
  /** The internal element with which a part leaves the operator's hands; the last one when empty or unknown. */
  readonly putDownWith: string;
  /** Places for parts that wait for the other person, where there is one. */
  readonly buffer: number;
  /** Net working time of a day, milliseconds. */
  readonly dayMs: number;
  readonly stops: readonly StopCause[];
  /** Shares of the parts. */
  readonly scrapShare: number;
  readonly reworkShare: number;
  readonly reworkMs: number;
}
