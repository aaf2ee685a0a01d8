/** How many records the log held when it was last looked at, kept apart from the log. */
export interface Seen {
  readonly records: number;
  /** Records that were gone at a later look, and that nobody has settled yet. */
  readonly missing: number;
}

/** A small place outside every shelf of the log, so that a log that comes back empty is noticed. */
export interface LastSeen {
  /** Null where nothing was ever seen. */
  read(): Seen | null;
  set(seen: Seen): void;
}
