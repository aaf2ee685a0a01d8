import type { Signal } from '@preact/signals';
import { judgePart } from '../../application/turn/judge-part';
import type { LeftToRework } from '../../domain/turn/left-to-rework';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { turnQuestion as words } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { madeWhen } from './made-when';

interface Props {
  readonly turn: Turn;
  readonly cycle: Cycle | LeftToRework;
  readonly left: Signal<readonly LeftToRework[]>;
}

/** Which part is being made good. What stopped the work needs no reason: it is said. */
export function ReworkInHand({ turn, cycle, left }: Props) {
  const { bench, isReadOnly } = useApp();
  const { key, outcome, partCode } = cycle;
  const isScrap = outcome === 'scrap';
  const judge = () => {
    const next = isScrap ? 'rework' : 'scrap';
    judgePart(bench, 'turn' in cycle ? cycle.turn : turn.id, key, next);
    // Of a turn before, only this screen has it in hand.
    left.value = left.value.map((part) => (part.key === key ? { ...part, outcome: next } : part));
  };
  return (
    <section class="stack number">
      <h2>{words.reworking(partCode, madeWhen(turn, cycle))}</h2>
      <p>{words.reworkingNote}</p>
      <p>
        <button
          type="button"
          class="choice pace-outcome"
          aria-pressed={isScrap}
          disabled={isReadOnly}
          onClick={judge}
        >
          {words.reworkFailed}
        </button>
      </p>
    </section>
  );
}
