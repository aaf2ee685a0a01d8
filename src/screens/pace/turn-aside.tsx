import './turn-aside.css';
import { useState } from 'preact/hooks';
import { partInHand } from '../../application/turn/part-in-hand';
import type { Part } from '../../domain/shop/shop';
import type { Doubt } from '../../domain/turn/doubt';
import { openDoubts } from '../../domain/turn/open-doubts';
import { NOT_STATED, type Stoppage, type Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { DoubtLine } from '../settle/doubt-line';
import { operatorOf } from '../settle/question';
import { reasonText } from './reason-text';
import { TurnOutlook } from './turn-outlook';
import type { TurnPanel } from './turn-panel';

export interface TurnAsideProps {
  readonly turn: Turn;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(said?: string): void;
}

/** Beside the figures: where the turn is heading, and the stoppage just past beside it; or the newest open question. */
export function TurnAside({ turn, open, acted }: TurnAsideProps) {
  const { bench } = useApp();
  const doubts = openDoubts(turn, bench.shop.value.parts.filter(isInUse).map(partInHand));
  const doubt = doubts.at(-1);
  const last = turn.stoppages.at(-1);
  // How many of those that stood open together were answered here: the next one is seen to be another.
  const [answered, setAnswered] = useState(0);
  const count = answered + doubts.length;
  // One thing is asked at a time, the newest; a reason just given is confirmed on the surface.
  const isStopNewer = last?.reason === NOT_STATED && (last.toMs ?? 0) > (doubt?.toMs ?? 0);
  if (!doubt || isStopNewer || doubt.kind === 'before-change') {
    return (
      <div class="pace-aside">
        {doubt && !isStopNewer ? (
          <button type="button" class="button pace-why number" onClick={(event) => open('doubt', event)}>
            {asks.sayWhat(doubt.toMs - doubt.fromMs, partChangedTo(doubt))}
          </button>
        ) : (
          last && !isLongPast(turn) && <StoppedWhy turn={turn} stoppage={last} open={open} />
        )}
        <TurnOutlook turn={turn} open={open} />
      </div>
    );
  }
  return (
    <DoubtLine
      turn={turn}
      key={doubt.key}
      doubt={doubt}
      {...(count > 1 ? { label: asks.openCount(answered + 1, count) } : {})}
      choose={(choice, event) => {
        // Whoever it is now is chosen beside the end of the turn.
        if ('asks' in choice) return open(choice.asks === 'why' ? 'gap' : 'end', event);
        choice.say(operatorOf(turn));
        setAnswered(doubts.length > 1 ? answered + 1 : 0);
        acted(asks.answered(choice.word, doubts.length - 1));
      }}
    />
  );
}

function partChangedTo(doubt: Doubt): string {
  return doubt.kind === 'before-change' ? doubt.suggestion.to.partCode : '';
}

function StoppedWhy({
  turn,
  stoppage,
  open,
}: Pick<TurnAsideProps, 'turn' | 'open'> & { stoppage: Stoppage }) {
  const ms = printedMs({ ...stoppage, toMs: stoppage.toMs ?? turn.lastAtMs });
  return (
    <button type="button" class="button pace-why number" onClick={(event) => open('reason', event)}>
      {stoppage.reason === NOT_STATED ? asks.sayWhy(ms) : asks.saidWhy(ms, reasonText(stoppage))}
    </button>
  );
}

/** Another part was done since: what stands still can be said at the end of the turn, and need not stand here. */
function isLongPast({ stoppages, cycles }: Turn): boolean {
  const before = cycles.at(-2);
  return before !== undefined && (stoppages.at(-1)?.toMs ?? Number.POSITIVE_INFINITY) <= before.toMs;
}

function isInUse({ retired }: Part): boolean {
  return !retired;
}
