import { partsOfDay } from '../../domain/day/part-of-day';
import type { Turn } from '../../domain/turn/turn';
import { ownRecord as own } from '../../i18n/en/own-record';
import { PartsSheet } from './parts-sheet';

/** The parts of a turn; where several people made them, of one of them, with a word about those they shared. */
export function OwnParts({ turn, shared }: { turn: Turn; shared: number }) {
  return (
    <div class="stack pace-own-wide">
      <PartsSheet lines={partsOfDay(turn.cycles)} />
      {shared > 0 && <p class="quiet small">{own.shared(shared)}</p>}
    </div>
  );
}
