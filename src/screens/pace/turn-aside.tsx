import './turn-aside.css';
import { useRef } from 'preact/hooks';
import { partInHand } from '../../application/turn/part-in-hand';
import type { Part } from '../../domain/shop/shop';
import type { Doubt } from '../../domain/turn/doubt';
import { openDoubts } from '../../domain/turn/open-doubts';
import { partOfDoubt } from '../../domain/turn/part-of-doubt';
import { NOT_STATED, type Stoppage, type Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { settle } from '../../i18n/en/settle';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { DoubtLine, UNREAD_MS } from '../settle/doubt-line';
import { operatorOf } from '../settle/question';
import { leftUnsaid } from './left-unsaid';
import { reasonText } from './reason-text';
import { timeOfDay } from './time-of-day';
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
  const last = turn.stoppages.slice(-1).find((stoppage) => isToSay(turn, stoppage));
  const answeredAt = useRef(-UNREAD_MS);
  // One thing is asked at a time, the newest; a reason just given is confirmed on the surface.
  const isStopNewer =
    last?.reason === NOT_STATED &&
    (last.toMs ?? 0) > Math.max(doubt?.toMs ?? 0, turn.cycles.at(-2)?.toMs ?? 0);
  if (!doubt || isStopNewer || doubt.kind === 'before-change') {
    return (
      <div class="pace-aside">
        {doubt && !isStopNewer ? (
          <button type="button" class="button pace-why number" onClick={(event) => open('doubt', event)}>
            {changeAsked(doubt)}
          </button>
        ) : (
          last && <StoppedWhy turn={turn} stoppage={last} open={open} />
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
      label={labelOf(turn, doubt)}
      choose={(choice, event) => {
        if (event.timeStamp - answeredAt.current < UNREAD_MS) return acted(asks.isNext);
        answeredAt.current = event.timeStamp;
        // Whoever it is now is chosen beside the end of the turn.
        if ('asks' in choice) return open(choice.asks === 'why' ? 'gap' : 'end', event);
        choice.say(operatorOf(turn));
        acted(asks.answered(choice.word, doubts.length - 1));
      }}
    />
  );
}

function changeAsked({ kind, suggestion }: Doubt): string {
  return kind === 'before-change' ? asks.sayWhat(suggestion.workedMs, suggestion.to.partCode) : '';
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

/** When, and on which part. */
function labelOf(turn: Turn, doubt: Doubt): string {
  const { wallMs, offsetMin } = turn.startedAt;
  return settle.label(timeOfDay({ wallMs: wallMs + doubt.fromMs, offsetMin }), partOfDoubt(turn, doubt));
}

/**
 * The last stoppage stands beside the figures until somebody says why, or that there is nothing to say; what was said
 * stands there until another part is done. Whoever took over is not asked about what was before.
 */
function isToSay({ cycles, people }: Turn, { key, reason, fromMs, toMs }: Stoppage): boolean {
  if (fromMs < people.at(-1)!.fromMs) return false;
  if (reason === NOT_STATED) return leftUnsaid.value !== key;
  return (cycles.at(-2)?.toMs ?? 0) < (toMs ?? Number.POSITIVE_INFINITY);
}

function isInUse({ retired }: Part): boolean {
  return !retired;
}
