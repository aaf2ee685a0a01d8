import { judgeCycle } from '../../application/turn/judge-cycle';
import { judgePart } from '../../application/turn/judge-part';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { ReworkNow } from './rework-now';

const outcomes = ['good', 'rework', 'scrap'] as const;

/** A part is good until somebody says otherwise. */
export function OutcomeChoice({ turn, cycle, chosen }: { turn: Turn; cycle: Cycle; chosen(): void }) {
  const { bench, isReadOnly } = useApp();
  const isFirst = turn.cycles.at(-2)?.part !== cycle.part && cycle.isCounted;
  return (
    <section class="stack" aria-label={asks.outcomeTitle(cycle.netMs)}>
      <h2>{asks.outcomeTitle(cycle.netMs)}</h2>
      <div class="choices">
        {outcomes.map((outcome) => (
          <button
            type="button"
            key={outcome}
            class="choice pace-outcome"
            aria-pressed={outcome === cycle.outcome}
            disabled={isReadOnly}
            onClick={() => {
              judgePart(bench, turn.id, cycle.key, outcome);
              chosen();
            }}
          >
            {words.outcomes[outcome]}
          </button>
        ))}
        <ReworkNow partDone={cycle.key} begun={chosen} />
        {isFirst && (
          <button
            type="button"
            class="choice pace-outcome"
            disabled={isReadOnly}
            onClick={() => {
              judgeCycle(bench, turn.id, cycle.key, 'first-off');
              chosen();
            }}
          >
            {asks.firstOff}
          </button>
        )}
      </div>
    </section>
  );
}
