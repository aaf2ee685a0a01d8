/** How a figure of the sheet came about: what a person needs to check it by hand. */
export interface Working {
  readonly what: string;
  readonly words: string;
  readonly symbols: string;
  readonly numbers: readonly string[];
  /** Readings left out of it, each with its cause; null where the figure holds no readings itself. */
  readonly leftOut: readonly string[] | null;
  readonly source: string;
}
