import './turn-controls.css';
import type { RefObject } from 'preact';
import type { Stamp } from '../../domain/records/stamp';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';
import type { TurnPanel } from './turn-panel';
import { undoText } from './undo-text';

interface Props {
  readonly turn: Turn;
  /** Parts that wait to be made good, of turns before too. */
  readonly toRework: number;
  readonly mainRef: RefObject<HTMLButtonElement | null>;
  /** How many taps were taken since the screen was opened: each shows its mark anew. */
  readonly taps: number;
  /** What has just happened, when it was no part done. */
  readonly note: string;
  tapMain(at: Stamp): void;
  stop(at: Stamp): void;
  undo(): void;
  open(panel: TurnPanel, event: MouseEvent): void;
}

/** The lower half: one large surface that never moves, Stop beside it, and what is needed now and then. */
export function TurnControls({ turn, toRework, mainRef, taps, note, tapMain, stop, undo, open }: Props) {
  const { isReadOnly } = useApp();
  const isStopped = turn.status === 'stopped';
  const isRework = isStopped && turn.stoppages.at(-1)!.category === 'rework';
  const stopWord = isRework ? words.reworkState : isStopped ? words.stoppedState : words.stop;
  const lastCycle = turn.cycles.at(-1);
  const undoWhat = undoText(turn);
  const { word, hint } = surfaceWords(turn, isRework);
  // Whoever took over reads nothing of the other's parts as their own.
  const isOwn = lastCycle?.person === turn.person;
  const said = note || hint || (lastCycle && isOwn ? words.lastPart(lastCycle.netMs) : words.tapHint);
  return (
    <div class="pace-controls">
      <TimingButton
        class={`pace-main ${isStopped ? 'is-stopped' : ''}`}
        disabled={isReadOnly}
        buttonRef={mainRef}
        onTap={tapMain}
      >
        {taps > 0 && <span key={taps} class="pace-flash" aria-hidden="true" />}
        <span class={`pace-main-word ${word.length > 12 ? 'is-long' : ''}`}>{word}</span>
        <span class="pace-main-note number">
          {!hint && !note && isOwn && <span aria-hidden="true">✓ </span>}
          {said}
        </span>
      </TimingButton>
      <TimingButton class="button pace-stop" disabled={isReadOnly || isStopped} onTap={stop}>
        {stopWord}
      </TimingButton>
      <div class="pace-seconds">
        <button type="button" class="button" disabled={isReadOnly || !undoWhat} onClick={undo}>
          {words.undo}
          {undoWhat && <span class="pace-second-note number">{undoWhat}</span>}
        </button>
        <button
          type="button"
          class="button"
          disabled={isReadOnly || !(lastCycle || toRework)}
          onClick={(event) => open('outcome', event)}
        >
          {words.lastPartIs}
          <span class="pace-second-note">
            {toRework > 0 && (lastCycle?.outcome ?? 'good') === 'good'
              ? words.toRework(toRework)
              : lastCycle && words.outcomes[lastCycle.outcome]}
          </span>
        </button>
        <button type="button" class="button" disabled={isReadOnly} onClick={(event) => open('change', event)}>
          {words.changePart}
        </button>
        <button
          type="button"
          class="button pace-end"
          disabled={isReadOnly}
          onClick={(event) => open('end', event)}
        >
          {words.endTurn}
          <span class="pace-second-note">{words.orHandOver}</span>
        </button>
      </div>
    </div>
  );
}

/** What a tap says now; and a hint that stands in the place of the part before. */
function surfaceWords(turn: Turn, isRework: boolean): { word: string; hint: string } {
  const { status, inHand, isPartBegun, stepsDone } = turn;
  const { elements = [], partsPerTap = 1 } = inHand;
  if (isRework) return { word: words.reworkDone, hint: words.reworkDoneHint };
  if (status === 'stopped') return { word: words.goOn, hint: words.goOnHint };
  if (!isPartBegun) return { word: words.beginPart, hint: words.beginHint };
  const element = stepsDone < elements.length - 1 && elements[stepsDone];
  if (!element) return { word: words.partDone(partsPerTap), hint: '' };
  return { word: element, hint: words.elementOf(stepsDone + 1, elements.length) };
}
