import { judgePart } from '../../application/turn/judge-part';
import type { Cycle } from '../../domain/turn/turn';
import { turnQuestion as words } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { timeOfDay } from './time-of-day';

/** Which part is being made good. What stopped the work needs no reason: it is said. */
export function ReworkInHand({ turn, cycle }: { turn: string; cycle: Cycle }) {
  const { bench, isReadOnly } = useApp();
  const { key, outcome, partCode, doneAt } = cycle;
  const isScrap = outcome === 'scrap';
  return (
    <section class="stack number">
      <h2>{words.reworking(partCode, timeOfDay(doneAt))}</h2>
      <p>{words.reworkingNote}</p>
      <p>
        <button
          type="button"
          class="choice pace-outcome"
          aria-pressed={isScrap}
          disabled={isReadOnly}
          onClick={() => judgePart(bench, turn, key, isScrap ? 'rework' : 'scrap')}
        >
          {words.reworkFailed}
        </button>
      </p>
    </section>
  );
}
