/** A log only grows, so any loss is a fault; a fifth is far beyond what a cleared-out test could explain. */
const MOST_LOST = 0.2;

/** So many fewer records than before that an older copy must not be given up for this one. */
export function hasCollapsed(records: number, before: number): boolean {
  return records < before * (1 - MOST_LOST);
}
