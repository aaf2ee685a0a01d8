import { median } from '../../statistics/median';
import { cleanCycles } from './clean-cycles';
import type { Turn } from './turn';

/** There is no third state: nothing is said about being quicker, and nothing urges anybody on. */
export type PaceState = 'steady' | 'slower';

/** Parts that the state looks back over. */
const LAST = 5;
/** Ratio of time to target at which the state turns, and at which it turns back: between the two it stays. */
const SLOWER_FROM = 1.1;
const STEADY_TO = 1.05;

/**
 * Whether the work has become slower than its target: by the median of the last five clean parts, so that one slow part
 * is no news, and with a threshold each way, so that it does not flicker. Null before five parts and while learning.
 */
export function paceState(turn: Turn): PaceState | null {
  const ratios = cleanCycles(turn).map(({ netMs, targetMs }) => netMs / targetMs);
  if (turn.isLearning || ratios.length < LAST) return null;
  let state: PaceState = 'steady';
  for (let end = LAST; end <= ratios.length; end += 1) {
    const middle = median(ratios.slice(end - LAST, end));
    if (middle >= SLOWER_FROM) state = 'slower';
    else if (middle <= STEADY_TO) state = 'steady';
  }
  return state;
}
