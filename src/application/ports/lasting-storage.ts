/** The browser's promise to keep what is stored until a person deletes it. */
export interface LastingStorage {
  /** Whether the promise was given; null where the browser does not say. */
  isGranted(): Promise<boolean | null>;
  /** Asks for it, and gives the answer. A browser may answer no without showing anything. */
  ask(): Promise<boolean | null>;
}
