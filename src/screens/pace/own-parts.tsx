import { useState } from 'preact/hooks';
import { partsOfDay } from '../../domain/day/part-of-day';
import { ownOfTurn } from '../../domain/turn/own-of-turn';
import type { Turn } from '../../domain/turn/turn';
import { ownRecord as own } from '../../i18n/en/own-record';
import { PartsSheet } from './parts-sheet';

/** The parts of a turn; where several people made them, of one at a time, without those they shared. */
export function OwnParts({ turn }: { turn: Turn }) {
  const [person, setPerson] = useState(turn.person);
  const people = [...new Set(turn.people.map((span) => span.person))];
  if (people.length === 1) return <PartsSheet lines={partsOfDay(turn.cycles)} />;
  const shared = turn.cycles.filter(({ isShared }) => isShared).length;
  return (
    <div class="stack pace-own-wide">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere */}
      <div class="choices" role="group" aria-label={own.whose}>
        {people.map((code) => (
          <button
            type="button"
            key={code}
            class="choice"
            aria-pressed={code === person}
            onClick={() => setPerson(code)}
          >
            {code}
          </button>
        ))}
      </div>
      <PartsSheet lines={partsOfDay(ownOfTurn(turn, person).cycles)} />
      {shared > 0 && <p class="quiet small">{own.shared(shared)}</p>}
    </div>
  );
}
