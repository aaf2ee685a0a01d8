import type { Turn } from '../turn/turn';
import { lostTime } from './lost-time';

/**
 * Turns that were written down afterwards and tell of no lost time: nothing told is not nothing lost. A turn that was
 * taken away again is none.
 */
export function lostUnknown(turns: readonly Turn[]): number {
  return turns.filter(
    (turn) => turn.enteredLater !== null && !turn.isWithdrawn && lostTime([turn]).length === 0,
  ).length;
}
