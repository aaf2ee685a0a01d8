import type { Turn } from './turn';

/** How much of what was made was tapped: where taps thin out, averages lean to the tidy hours. */
export interface Capture {
  /** Parts tapped, in the turns in which somebody counted. */
  readonly tapped: number;
  readonly counted: number;
  /** Tapped ÷ counted. */
  readonly share: number;
  /** Less than nine tenths: the averages speak for a part of the work only. */
  readonly isPartial: boolean;
}

const PARTIAL_BELOW = 0.9;

/**
 * Capture rate of some turns, those left out in which nobody counted; null when nobody did, or counted none.
 *
 * Formula: share = parts tapped ÷ parts counted by hand, over the turns that have a count
 */
export function capture(turns: readonly Turn[]): Capture | null {
  const known = turns.filter(({ countedParts }) => countedParts !== null);
  const counted = known.reduce((sum, turn) => sum + turn.countedParts!, 0);
  if (counted === 0) return null;
  const tapped = known.reduce(
    (sum, { cycles }) => sum + cycles.filter(({ isEntered }) => !isEntered).length,
    0,
  );
  const share = tapped / counted;
  return { tapped, counted, share, isPartial: share < PARTIAL_BELOW };
}
