import type { Stamp } from '../records/stamp';
import { goodSoFar } from './good-so-far';
import { pace } from './pace';
import type { Turn } from './turn';
import { endOfWork } from './working-line';

/**
 * When the parts that are wanted would be done if each took its target from now on and nothing were lost; milliseconds
 * since the turn began. Parts to come are of the kind in hand, and what it took so far counts up to its target. Null
 * without a target, where nobody said how many, and once all are done. It is arithmetic and no forecast.
 */
export function finishAtTarget(turn: Turn, now: Stamp): number | null {
  const { inHand, planned, wantedParts } = turn;
  const { targetMs } = inHand;
  const left = (wantedParts ?? 0) - goodSoFar(turn);
  if (targetMs === null || left <= 0) return null;
  const { turnElapsedMs, partWorkedMs } = pace(turn, now);
  return endOfWork(turnElapsedMs, left * targetMs - Math.min(targetMs, partWorkedMs), planned.breaks);
}
