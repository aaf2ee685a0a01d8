import { judgeCycle } from '../../application/turn/judge-cycle';
import { judgePart } from '../../application/turn/judge-part';
import { reworkMarked } from '../../domain/turn/rework-waiting';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { ReworkNow } from './rework-now';
import { timeOfDay } from './time-of-day';

const outcomes = ['good', 'rework', 'scrap'] as const;

interface Props {
  readonly turn: Turn;
  readonly cycle: Cycle;
  chosen(said?: string): void;
}

/** A part is good, and all of it work, until somebody says otherwise; and the parts that wait to be made good. */
export function OutcomeChoice({ turn, cycle, chosen }: Props) {
  const { bench, isReadOnly } = useApp();
  const isFirst = turn.cycles.at(-2)?.part !== cycle.part && cycle.isCounted;
  const hadStop = cycle.judgedAs === 'interrupted';
  const waiting = reworkMarked(turn).waiting.filter(({ key }) => key !== cycle.key);
  const said = {
    good: '',
    rework: asks.reworkSaid,
    scrap: cycle.targetMs === null ? '' : asks.scrapSaid,
  };
  const choice = (word: string, isChosen: boolean | undefined, choose: () => string) => (
    <button
      type="button"
      class="choice pace-outcome"
      aria-pressed={isChosen}
      disabled={isReadOnly}
      onClick={() => chosen(choose())}
    >
      {word}
    </button>
  );
  return (
    <section class="stack" aria-label={asks.outcomeTitle(cycle.netMs)}>
      <h2>{asks.outcomeTitle(cycle.netMs)}</h2>
      <div class="choices">
        {outcomes.map((outcome) =>
          choice(words.outcomes[outcome], outcome === cycle.outcome, () => {
            judgePart(bench, turn.id, cycle.key, outcome);
            return said[outcome];
          }),
        )}
        <ReworkNow partDone={cycle.key} word={asks.reworkNow} begun={chosen} />
        {cycle.judgedAs !== 'two-parts' &&
          choice(asks.stopInIt, hadStop, () => {
            judgeCycle(bench, turn.id, cycle.key, hadStop ? 'one-part' : 'interrupted');
            return hadStop ? asks.allWorkSaid : asks.stopInItSaid;
          })}
        {isFirst &&
          choice(asks.firstOff, undefined, () => {
            judgeCycle(bench, turn.id, cycle.key, 'first-off');
            return '';
          })}
        {waiting.map(({ key, partCode, doneAt, netMs }) => (
          <ReworkNow
            key={key}
            partDone={key}
            word={asks.waitingPart(partCode, timeOfDay(doneAt), netMs)}
            begun={chosen}
          />
        ))}
      </div>
    </section>
  );
}
