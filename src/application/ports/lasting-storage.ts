/** The browser's promise to keep what is stored until a person deletes it, and how far it goes without one. */
export interface LastingStorage {
  /** Whether the promise was given; null where the browser does not say. */
  isGranted(): Promise<boolean | null>;
  /** Asks for it, and gives the answer. A browser may answer no without showing anything. */
  ask(): Promise<boolean | null>;
  /** Room left for records, in bytes; null where the browser does not say. */
  roomBytes(): Promise<number | null>;
  /**
   * A tab of a browser that deletes what a site keeps once it was not used for seven days: on iPhones and iPads,
   * until the page is put on the home screen.
   */
  isForgetfulTab(): boolean;
}
