import { judgeCycle } from '../../application/turn/judge-cycle';
import { judgePart } from '../../application/turn/judge-part';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { madeWhen } from './made-when';
import { ReworkNow } from './rework-now';

const outcomes = ['good', 'rework', 'scrap'] as const;

interface Props {
  readonly turn: Turn;
  /** The part done last; none before the first. */
  readonly cycle: Cycle | undefined;
  /** Parts that wait to be made good, of turns before too. */
  readonly waiting: readonly Cycle[];
  chosen(said?: string): void;
}

/** How the part before is; and the parts that wait to be made good. */
export function OutcomeChoice({ turn, cycle, waiting, chosen }: Props) {
  const title = cycle ? asks.outcomeTitle(cycle.netMs) : words.lastPartIs;
  return (
    <section class="stack" aria-label={title}>
      <h2>{title}</h2>
      <div class="choices">
        {cycle && <OfPart turn={turn} cycle={cycle} chosen={chosen} />}
        {waiting
          .filter(({ key }) => key !== cycle?.key)
          .map((part) => (
            <ReworkNow
              key={part.key}
              partDone={part.key}
              word={asks.waitingPart(part.partCode, madeWhen(turn, part), part.netMs)}
              begun={chosen}
            />
          ))}
      </div>
    </section>
  );
}

/** A part is good, and all of it work, until somebody says otherwise. */
function OfPart({ turn, cycle, chosen }: Omit<Props, 'waiting'> & { readonly cycle: Cycle }) {
  const { bench, isReadOnly } = useApp();
  const isFirst = turn.cycles.at(-2)?.part !== cycle.part && cycle.isCounted;
  const hadStop = cycle.judgedAs === 'interrupted';
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
    <>
      {outcomes.map((outcome) =>
        choice(
          outcome === 'rework' ? asks.reworkLater : words.outcomes[outcome],
          outcome === cycle.outcome,
          () => {
            judgePart(bench, turn.id, cycle.key, outcome);
            return said[outcome];
          },
        ),
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
    </>
  );
}
