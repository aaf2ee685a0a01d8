import { observedMean } from '../../statistics/observed-mean';
import { ownOfTurn } from './own-of-turn';
import type { Turn } from './turn';

/**
 * The running average of one part of whoever is there in this turn, stoppages out, in milliseconds, over the `n` parts that count
 * of all that were `done`; null before the first that counts.
 */
export function averageOfPart(turn: Turn, part: string): { n: number; done: number; meanMs: number } | null {
  const together = turn.inHand.partsPerTap ?? 1;
  const own = ownOfTurn(turn).cycles.filter(
    (cycle) => cycle.part === part && (turn.inHand.part !== part || cycle.together === together),
  );
  const netTimesMs = own.filter(({ isCounted }) => isCounted).map(({ netMs }) => netMs);
  if (netTimesMs.length === 0) return null;
  return { n: netTimesMs.length, done: own.length, meanMs: observedMean(netTimesMs) };
}
