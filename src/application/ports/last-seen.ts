/** How many records of one tablet the log held when it was last looked at, kept apart from the log. */
export interface Seen {
  readonly records: number;
  /** Records that were gone at a later look, and that nobody has settled yet. */
  readonly missing: number;
}

/** A small place outside every shelf of the log, so that a log that comes back empty is noticed. */
export interface LastSeen {
  /** By tablet, or under ALL_TABLETS; null where nothing was ever seen. */
  read(): ReadonlyMap<string, Seen> | null;
  set(seen: ReadonlyMap<string, Seen>): void;
}

/** Older releases kept a total alone. No tablet has this name. */
export const ALL_TABLETS = '';
