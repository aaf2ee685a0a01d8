/** How a figure was worked out, in words. */
export interface Working {
  readonly title: string;
  /** What the figure means. */
  readonly says: string;
  readonly formula?: string;
  /** The formula with the numbers put in. */
  readonly put?: string;
  /** The numbers themselves, with what they are. */
  readonly numbers?: { readonly title: string; readonly values: readonly string[] };
}
