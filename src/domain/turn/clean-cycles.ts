import { ownOfTurn } from './own-of-turn';
import type { Cycle, Turn } from './turn';

/** A part that says something about the pace: it counts, and has a target. Times in milliseconds. */
export interface CleanCycle extends Cycle {
  readonly targetMs: number;
}

/** The clean parts of whoever is there now, in the order in which they were done. */
export function cleanCycles(turn: Turn): CleanCycle[] {
  return ownOfTurn(turn).cycles.filter((cycle): cycle is CleanCycle => cycle.isCounted && !!cycle.targetMs);
}
