/** A newer release of the app that has been fetched and waits. */
export interface AppUpdate {
  /** Called once when a newer release waits. */
  onWaiting(call: () => void): void;
  /**
   * Takes the newer release and reloads the page, unless something is being timed by then. Only called while nothing is.
   */
  apply(): void;
}
