import { judgePart } from '../../application/turn/judge-part';
import type { Turn } from '../../domain/turn/turn';
import { turnQuestion as words } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { timeOfDay } from './time-of-day';

/** Which part is being made good. What stopped the work needs no reason: it is said. */
export function ReworkInHand({ turn, ofPart }: { turn: Turn; ofPart: string }) {
  const { bench, isReadOnly } = useApp();
  // A part of an earlier turn is known by its record alone.
  const cycle = turn.cycles.find(({ key }) => key === ofPart);
  const isScrap = cycle?.outcome === 'scrap';
  return (
    <section class="stack number">
      <h2>{cycle ? words.reworking(cycle.partCode, timeOfDay(cycle.doneAt)) : words.reworkingAny}</h2>
      <p>{words.reworkingNote}</p>
      {cycle && (
        <p>
          <button
            type="button"
            class="choice pace-outcome"
            aria-pressed={isScrap}
            disabled={isReadOnly}
            onClick={() => judgePart(bench, turn.id, ofPart, isScrap ? 'rework' : 'scrap')}
          >
            {words.reworkFailed}
          </button>
        </p>
      )}
    </section>
  );
}
