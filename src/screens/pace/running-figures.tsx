import type { ComponentChildren } from 'preact';
import { partInHand } from '../../application/turn/part-in-hand';
import type { Part } from '../../domain/shop/shop';
import { openDoubts } from '../../domain/turn/open-doubts';
import { pace } from '../../domain/turn/pace';
import { NOT_STATED, type Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';
import { DoubtFigure } from './doubt-figure';
import { Position } from './position';
import { reasonText } from './reason-text';
import { Tally } from './tally';
import { TargetBar } from './target-bar';
import { TickingClock } from './ticking-clock';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
  readonly heading: ComponentChildren;
}

/** While work runs: this part's time before everything else. */
export function RunningFigures({ turn, open, acted, heading }: Props) {
  const { parts } = useApp().bench.shop.value;
  const doubt = openDoubts(turn, parts.filter(isInUse).map(partInHand)).at(-1);
  const last = turn.stoppages.at(-1);
  // One thing is asked at a time, the newest; a reason just given is confirmed on the surface.
  const isStopNewer = last?.reason === NOT_STATED && (last.toMs ?? 0) > (doubt?.toMs ?? 0);
  const lastMs = last ? printedMs({ ...last, toMs: last.toMs ?? turn.lastAtMs }) : 0;
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
        {doubt && !isStopNewer ? (
          <DoubtFigure turn={turn} doubt={doubt} open={open} acted={acted} />
        ) : (
          last && (
            <button type="button" class="button pace-why number" onClick={(event) => open('reason', event)}>
              {last.reason === NOT_STATED ? words.sayWhy(lastMs) : words.saidWhy(lastMs, reasonText(last))}
            </button>
          )
        )}
      </div>
    </div>
  );
}

function isInUse({ retired }: Part): boolean {
  return !retired;
}
