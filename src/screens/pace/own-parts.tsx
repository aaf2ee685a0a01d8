import { reworkMarked } from '../../domain/turn/rework-waiting';
import type { Turn } from '../../domain/turn/turn';
import { turnOfPerson } from '../../domain/turn/turn-of-person';
import { ownRecord as own } from '../../i18n/en/own-record';
import { PartsSheet } from './parts-sheet';

/** The parts of one person in a turn, with a word about those that were reworked, and those that two shared. */
export function OwnParts({ turn, person }: { turn: Turn; person: string }) {
  const { cycles } = turnOfPerson(turn, person);
  // Whoever it was that made it good.
  const { marked, waiting } = reworkMarked({ cycles, stoppages: turn.stoppages });
  const shared = turn.cycles.filter(({ isShared }) => isShared).length;
  return (
    <div class="stack pace-own-wide">
      <PartsSheet cycles={cycles} />
      {marked.length > 0 && <p class="number">{own.reworkOf(marked.length, waiting.length)}</p>}
      {shared > 0 && <p class="quiet small">{own.shared(shared)}</p>}
    </div>
  );
}
