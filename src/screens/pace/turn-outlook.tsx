import { type RecentPart, RecentParts } from '../../charts/recent-parts';
import { goodSoFar } from '../../domain/turn/good-so-far';
import { ownOfTurn } from '../../domain/turn/own-of-turn';
import { paceState } from '../../domain/turn/pace-state';
import type { Turn } from '../../domain/turn/turn';
import { outlook as words } from '../../i18n/en/outlook';
import { useApp } from '../app';
import { useWidth } from '../review/use-width';
import { outlookText } from './outlook-text';
import type { TurnPanel } from './turn-panel';
import { useProjection } from './use-projection';

interface Props {
  readonly turn: Turn;
  open(panel: TurnPanel, event: MouseEvent): void;
}

const SHOWN = 20;
const HEIGHT = 56;

/** When it will be done, how the last parts went, and the parts themselves; a tap asks how many are wanted. */
export function TurnOutlook({ turn, open }: Props) {
  const { ref, width } = useWidth<HTMLSpanElement>();
  const found = useProjection(turn);
  const state = paceState(turn);
  const { parts, target } = shownParts(turn);
  const text = outlookText(turn, found, useApp().bench.clock.now());
  const { wantedParts } = turn;
  const good = goodSoFar(turn);
  const isAsked = text === words.ask;
  // What says that a tap opens something.
  const mark = <span aria-hidden="true">{'\u00a0›'}</span>;
  return (
    <button type="button" class="button pace-outlook number" onClick={(event) => open('plan', event)}>
      <span class="pace-outlook-finish">
        {text}
        {isAsked && mark}
      </span>
      {!isAsked && (
        <span class="pace-outlook-ask">
          {wantedParts === null ? words.ask : words.left(Math.max(0, wantedParts - good), wantedParts)}
          {mark}
        </span>
      )}
      {state ? (
        <span class="pace-outlook-state" data-state={state}>
          <span aria-hidden="true">{state === 'slower' ? '▼' : '◆'}</span> {words.states[state]}
        </span>
      ) : (
        parts.length > 0 && <span class="pace-outlook-state">{words.lastParts(parts.length)}</span>
      )}
      <span class="pace-outlook-parts" ref={ref}>
        {width > 0 && parts.length > 0 && (
          <RecentParts width={width} height={HEIGHT} parts={parts} target={target} />
        )}
      </span>
    </button>
  );
}

/** Against their targets where each has one, or else their times; who learns is measured against nothing. */
function shownParts(turn: Turn): { parts: readonly RecentPart[]; target: number | null } {
  const cycles = ownOfTurn(turn).cycles.slice(-SHOWN);
  const isMeasured = cycles.every(({ targetMs }) => targetMs);
  return {
    parts: cycles.map(({ netMs, targetMs, isCounted }) => ({
      value: isMeasured ? netMs / targetMs! : netMs,
      isCounted,
    })),
    target: isMeasured && !turn.isLearning ? 1 : null,
  };
}
