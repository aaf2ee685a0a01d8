import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { LeftToRework } from '../../domain/turn/left-to-rework';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { ReasonChoice } from './reason-choice';
import { ReworkInHand } from './rework-in-hand';
import { TickingClock } from './ticking-clock';

interface Props {
  readonly turn: Turn;
  readonly left: Signal<readonly LeftToRework[]>;
  acted(): void;
  readonly heading: ComponentChildren;
}

/** While work stands still: how long it has, and why, if anybody wants to say. */
export function StoppedFigures({ turn, left, acted, heading }: Props) {
  const { partElapsedMs } = pace(turn, turn.lastStamp);
  const stoppage = turn.stoppages.at(-1)!;
  const isRework = stoppage.category === 'rework';
  const reworked = [...left.value, ...turn.cycles].find(({ key }) => key === stoppage.ofPart);
  return (
    <div class="pace-figures is-stopped">
      <div class="pace-this-part">
        {heading}
        <p class="pace-state">{isRework ? words.reworking : words.stopClock}</p>
        <TickingClock
          class="pace-clock"
          label={isRework ? words.reworking : words.stopClock}
          read={(now) => pace(turn, now).stoppedForMs ?? 0}
        />
        <p class="pace-target number">{words.partSoFar(partElapsedMs)}</p>
      </div>
      {reworked ? (
        <ReworkInHand turn={turn} cycle={reworked} left={left} />
      ) : (
        <ReasonChoice turn={turn.id} stoppage={stoppage} title={asks.reasonTitle} chosen={() => acted()} />
      )}
    </div>
  );
}
