import { reworkMarked } from './rework-waiting';
import type { Cycle, Turn } from './turn';

/** A part that waits, and the turn that it belongs to. */
export type LeftToRework = Cycle & { readonly turn: string };

/** What turns of one tablet left waiting, in whichever turn after it a rework was begun. */
export function stillWaiting(turns: readonly Turn[], tablet: string): LeftToRework[] {
  const stoppages = turns.flatMap((turn) => turn.stoppages);
  return turns
    .filter(({ id }) => id.startsWith(tablet))
    .flatMap(({ id, cycles }) =>
      reworkMarked({ cycles, stoppages }).waiting.map((cycle) => ({ ...cycle, turn: id })),
    );
}
