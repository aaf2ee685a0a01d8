/** A small place that tells when the page was last there. It is overwritten all the time, and is no record. */
export interface AliveMark {
  /** Wall clock, milliseconds. */
  set(wallMs: number): void;
  /** What was set last, also by a page before this one; null when nothing was. */
  read(): number | null;
}
