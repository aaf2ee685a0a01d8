import { partInHand } from '../../application/turn/part-in-hand';
import type { Part } from '../../domain/shop/shop';
import { openDoubts } from '../../domain/turn/open-doubts';
import { NOT_STATED, type Turn } from '../../domain/turn/turn';
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
  acted(): void;
}

/** Beside the figures: the newest open question, or the stoppage just past; else where the turn is heading. */
export function TurnAside({ turn, open, acted }: TurnAsideProps) {
  const { bench } = useApp();
  const doubt = openDoubts(turn, bench.shop.value.parts.filter(isInUse).map(partInHand)).at(-1);
  const last = turn.stoppages.at(-1);
  // One thing is asked at a time, the newest; a reason just given is confirmed on the surface.
  const isStopNewer = last?.reason === NOT_STATED && (last.toMs ?? 0) > (doubt?.toMs ?? 0);
  if (!doubt || isStopNewer) {
    if (!last || isLongPast(turn)) return <TurnOutlook turn={turn} open={open} />;
    const lastMs = printedMs({ ...last, toMs: last.toMs ?? turn.lastAtMs });
    return (
      <button type="button" class="button pace-why number" onClick={(event) => open('reason', event)}>
        {last.reason === NOT_STATED ? asks.sayWhy(lastMs) : asks.saidWhy(lastMs, reasonText(last))}
      </button>
    );
  }
  if (doubt.kind === 'before-change') {
    return (
      <button type="button" class="button pace-why number" onClick={(event) => open('doubt', event)}>
        {asks.sayWhat(doubt.toMs - doubt.fromMs, doubt.suggestion.to.partCode)}
      </button>
    );
  }
  return (
    <DoubtLine
      turn={turn}
      doubt={doubt}
      choose={(choice, event) => {
        // Whoever it is now is chosen beside the end of the turn.
        if ('asks' in choice) return open(choice.asks === 'why' ? 'gap' : 'end', event);
        choice.say(operatorOf(turn));
        acted();
      }}
    />
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
