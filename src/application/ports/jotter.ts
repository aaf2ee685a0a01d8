/**
 * A small place for what is being written and has not happened yet, such as a study in preparation. It outlives a
 * reload and is no record: when it is lost, something has to be typed again, and nothing else.
 */
export interface Jotter {
  read(name: string): string | null;
  /** Null takes it away. */
  write(name: string, text: string | null): void;
}
