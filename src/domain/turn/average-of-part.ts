import { observedMean } from '../../statistics/observed-mean';
import { ownOfTurn } from './own-of-turn';
import type { Cycle, Turn } from './turn';

/**
 * The running average of one part in this turn, of whoever is there now, stoppages out, in milliseconds, over the `n`
 * parts that count of all that were `done`; null before the first that counts. Who learns sees what it takes too.
 */
export function averageOfPart(turn: Turn, part: string): { n: number; done: number; meanMs: number } | null {
  const together = turn.inHand.partsPerTap ?? 1;
  const own = ownOfTurn(turn).cycles.filter(
    (cycle) => cycle.part === part && (turn.inHand.part !== part || cycle.together === together),
  );
  const isOwn = ({ isLearning, doubt, setAside }: Cycle) =>
    turn.isLearning && isLearning && doubt === null && setAside === '';
  const netTimesMs = own.filter((cycle) => cycle.isCounted || isOwn(cycle)).map(({ netMs }) => netMs);
  if (netTimesMs.length === 0) return null;
  return { n: netTimesMs.length, done: own.length, meanMs: observedMean(netTimesMs) };
}
