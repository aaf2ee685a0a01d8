import type { DaySummary } from '../../domain/day/summarise-day';

/** A summary with the turns it was made from. */
export interface KeptDay {
  readonly day: string;
  /** Their ids, in order. */
  readonly turns: readonly string[];
  readonly summary: DaySummary;
}

/** Up to where the log was read, and by which formulas and terms. */
export interface SummaryMark {
  /** The newest record of this tablet that the summaries know of. */
  readonly sequence: number;
  /** What they were made with: summaries made with anything else are worth nothing. */
  readonly terms: string;
}

/**
 * Where summaries of days are kept, so that nobody waits for them twice. Everything on it can be made again from
 * the log: whatever fails here costs time and never a figure.
 *
 * Must do all of a change or none of it.
 */
export interface SummaryShelf {
  readMark(): Promise<SummaryMark | null>;
  /** Days from and to, both included, oldest first. */
  readDays(from: string, to: string): Promise<KeptDay[]>;
  /** Notes the mark; drops the days that one of the turns lies in. */
  dropTurns(turns: readonly string[], mark: SummaryMark): Promise<void>;
  /** Drops everything and notes the mark; null: the next reader makes all anew. */
  clear(mark: SummaryMark | null): Promise<void>;
  keep(days: readonly KeptDay[]): Promise<void>;
}
