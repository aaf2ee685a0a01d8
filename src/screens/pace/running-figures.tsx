import type { ComponentChildren } from 'preact';
import { pace } from '../../domain/turn/pace';
import { NOT_STATED, type Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { Position } from './position';
import { reasonText } from './reason-text';
import { Tally } from './tally';
import { TargetBar } from './target-bar';
import { TickingClock } from './ticking-clock';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  open(panel: TurnPanel, event: MouseEvent): void;
  readonly heading: ComponentChildren;
}

/** While work runs: this part's time before everything else. */
export function RunningFigures({ turn, open, heading }: Props) {
  const last = turn.stoppages.at(-1);
  const lastMs = last ? (last.toMs ?? 0) - last.fromMs : 0;
  return (
    <div class="pace-figures">
      <div class="pace-this-part">
        {heading}
        <TickingClock
          class="pace-clock"
          label={words.thisPart}
          read={(now) => pace(turn, now).partElapsedMs}
        />
        <TargetBar turn={turn} />
      </div>
      <div class="pace-side-figures">
        <Position turn={turn} />
        <Tally turn={turn} />
        {last && (
          <button type="button" class="button pace-why number" onClick={(event) => open('reason', event)}>
            {last.reason === NOT_STATED ? words.sayWhy(lastMs) : words.saidWhy(lastMs, reasonText(last))}
          </button>
        )}
      </div>
    </div>
  );
}
