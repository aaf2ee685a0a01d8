/**
 * The moment of an event on two clocks.
 *
 * The monotonic clock measures: it never goes back, but it starts anew with every run of the page
 * and may stand still while the tablet sleeps. The wall clock says when, and bridges runs and sleep.
 */
export interface Stamp {
  /** Names one run of the page; monotonic readings of different runs cannot be compared. */
  readonly run: string;
  /** Monotonic clock, whole milliseconds since the run began. */
  readonly monoMs: number;
  /** Wall clock, whole milliseconds since 1970-01-01T00:00:00Z. */
  readonly wallMs: number;
  /** IANA name of the time zone, for display only. */
  readonly zone: string;
  /** Minutes to add to UTC for local time at that moment. */
  readonly offsetMin: number;
}
