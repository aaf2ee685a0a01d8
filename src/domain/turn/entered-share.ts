import type { Turn } from './turn';

/** Parts that were written down afterwards, of all that were done. */
export interface EnteredShare {
  readonly entered: number;
  readonly done: number;
}

/** How many parts of some turns were entered later; null when none was. */
export function enteredShare(turns: readonly Turn[]): EnteredShare | null {
  const cycles = turns.flatMap((turn) => turn.cycles);
  const entered = cycles.filter(({ isEntered }) => isEntered).length;
  return entered === 0 ? null : { entered, done: cycles.length };
}
