/** One tab writes at a time: two would number their records alike. */
export interface WriterLock {
  readonly isHeld: boolean;
  /**
   * Asks the tab that writes to finish and hand over, and takes the lock from it when it does not answer.
   * Resolves when this tab is the writer.
   */
  takeOver(): Promise<void>;
  /** Called when another tab takes over, with time to finish: what it returns is waited for. */
  onAsked(finish: () => Promise<void>): void;
  /** Called when the lock was taken without asking, because this tab did not answer. */
  onTaken(call: () => void): void;
}
