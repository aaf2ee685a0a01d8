/**
 * A monotonic clock whose steps are longer than this, in milliseconds, is told of with the times it took. Browsers
 * that hide from trackers round theirs to 16.7 ms, or to 100 ms; others step by 1 ms or less.
 */
export const COARSE_STEP_MS = 5;
