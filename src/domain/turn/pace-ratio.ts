import type { CleanCycle } from './clean-cycles';

/** Parts that the ratio looks back over. */
export const LAST = 10;

/**
 * Pace ratio of the last ten clean parts: 1 is the target, above it slower; null before the first.
 *
 * Formula: Σ net time / Σ target, a ratio of sums. The mean of single ratios would make a short part weigh as much as
 * a long one.
 */
export function paceRatio(cycles: readonly CleanCycle[]): number | null {
  const last = cycles.slice(-LAST);
  if (last.length === 0) return null;
  const sum = (of: (cycle: CleanCycle) => number) => last.reduce((total, cycle) => total + of(cycle), 0);
  return sum(({ netMs }) => netMs) / sum(({ targetMs }) => targetMs);
}
