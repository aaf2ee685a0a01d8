/**
 * The disk is asked for a moment after the answer. Asked at once, it would wait for the database's own flush of the same
 * record, and that one for it, and a tap would be saved in twice the time. Where the power fails in that moment, the
 * database has the record on disk, and the next opening copies it to the journal.
 */
const FLUSH_AFTER_MS = 200;

/** One flush for all that was written since the last, soon after the first of it. */
export class LateFlush {
  private isAsked = false;
  private fault: unknown = null;

  constructor(private readonly flush: () => void) {}

  ask(): void {
    if (this.isAsked) return;
    this.isAsked = true;
    setTimeout(() => {
      this.isAsked = false;
      try {
        this.flush();
      } catch (error) {
        this.fault = error;
      }
    }, FLUSH_AFTER_MS);
  }

  /** @throws what a flush has thrown, for good: what is written behind it may not be on the disk either */
  mustBeWell(): void {
    if (this.fault !== null) throw this.fault;
  }
}
