import { isGood } from './earned-time';
import { reworkMarked } from './rework-waiting';
import type { Turn } from './turn';

/** Parts of a turn that nobody has to come back to: neither scrap nor waiting for rework. */
export function goodSoFar(turn: Pick<Turn, 'cycles' | 'stoppages'>): number {
  return turn.cycles.filter(isGood).length - reworkMarked(turn).waiting.length;
}
