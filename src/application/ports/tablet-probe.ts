/** What a page can find out about the tablet and the browser it runs in. It leaves no record behind. */
export interface TabletProbe {
  /** The browser as it names itself. */
  readonly browser: string;
  /** Width and height in pixels of the page, and how many dots of the screen make one. */
  readonly screen: string;
  /** Whether the system keeps the screen on: it is asked, and let go at once. */
  keepsScreenOn(): Promise<'kept' | 'refused' | 'cannot'>;
  /** The app's files lie on the tablet, and this page came from them. */
  isOffline(): boolean;
  /**
   * Milliseconds that each of so many strict writes took, one after another, in a database of its own that never
   * holds a record.
   */
  saveTimes(count: number): Promise<readonly number[]>;
}
