import { useSignal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Bench } from '../../application/bench';
import { beginPart } from '../../application/turn/begin-part';
import { endPartElement } from '../../application/turn/end-part-element';
import { markPartDone } from '../../application/turn/mark-part-done';
import { resumeWork } from '../../application/turn/resume-work';
import { stopWork } from '../../application/turn/stop-work';
import { undoLastTap } from '../../application/turn/undo-last-tap';
import type { Stamp } from '../../domain/records/stamp';
import type { LeftToRework } from '../../domain/turn/left-to-rework';
import { ownOfTurn } from '../../domain/turn/own-of-turn';
import { reworkMarked } from '../../domain/turn/rework-waiting';
import type { Turn } from '../../domain/turn/turn';
import { turnNow } from '../../domain/turn/turn-now';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';
import { TurnControls } from './turn-controls';
import { TurnHeading } from './turn-heading';
import type { TurnPanel } from './turn-panel';
import { TurnUpper } from './turn-upper';
import { undoText } from './undo-text';

/** Undo takes the last tap back at once for this long. */
const UNDO_WITHIN_MS = 10_000;

/** A turn that runs or stands still. Figures above, the surface below; a question takes the place of figures. */
export function TurnInHand({ turn, isAwake }: { turn: Turn; isAwake: boolean }) {
  const { bench } = useApp();
  const [panel, setPanel] = useState<TurnPanel>('figures');
  const [taps, setTaps] = useState(0);
  const [note, setNote] = useState('');
  const [spoken, setSpoken] = useState('');
  const main = useRef<HTMLButtonElement>(null);
  const upper = useRef<HTMLElement>(null);
  const left = useSignal<readonly LeftToRework[]>([]);
  const { waiting } = reworkMarked({ ...turn, cycles: [...left.value, ...turn.cycles] });
  useEffect(() => {
    readLeft(bench).then(
      (found) => {
        left.value = found;
      },
      () => {},
    );
  }, [bench, turn.id]);

  // A pedal or a key presses what has the focus, so after every act that is the surface again.
  const toMain = () => main.current?.focus({ preventScroll: true });
  useEffect(toMain, []);

  const show = (said: string, shown = '') => {
    setPanel('figures');
    setNote(shown);
    setSpoken(said);
    toMain();
  };
  const acted = (said: string, shown = '') => bench.afterSaving(() => show(said, shown));

  const tapMain = (at: Stamp) => {
    // A bounce is recorded like any tap: what it was is a question to the records, and can be answered later.
    const before = bench.turn.peek();
    if (!before) return;
    const isStep = before.stepsDone < (before.inHand.elements?.length ?? 0) - 1;
    const isStopped = before.status === 'stopped';
    if (isStopped) resumeWork(bench, at);
    else if (!before.isPartBegun) beginPart(bench, at);
    else if (isStep) endPartElement(bench, at);
    else markPartDone(bench, at);
    bench.afterSaving(() => {
      setTaps((taps) => taps + 1);
      const after = bench.turn.peek();
      if (!after) return;
      if (isStopped) {
        const { category, fromMs, toMs } = after.stoppages.at(-1)!;
        const reworked = category === 'rework' ? words.announceReworked(toMs! - fromMs) : '';
        show(reworked || words.announceGoing, reworked);
      } else if (!before.isPartBegun) show(words.announceBegun);
      else if (isStep) show('');
      else if (after.cycles.length > before.cycles.length)
        show(words.announceDone(ownOfTurn(after).cycles.length, after.cycles.at(-1)!.netMs));
      else show(words.secondTapNote, words.secondTapNote);
    });
  };
  const stop = (at: Stamp) => {
    stopWork(bench, at);
    acted(words.stoppedState);
  };
  const undo = () => {
    // What was tapped a while ago is taken back only by somebody who was asked.
    const agoMs = turnNow(turn, bench.clock.now()) - (turn.undoable?.atMs ?? 0);
    if (agoMs > UNDO_WITHIN_MS) return setPanel('undo');
    const said = words.takenBack(undoText(turn));
    undoLastTap(bench);
    acted(said, said);
  };
  const open = (wanted: TurnPanel, event: MouseEvent) => {
    setPanel(wanted);
    // Someone without a pointer is led into the question; a finger leaves the keys to the surface.
    if (event.detail > 0) toMain();
    else requestAnimationFrame(() => upper.current?.querySelector('button')?.focus());
  };
  const Keys = useLazy(true, loadKeys);

  return (
    <div class="pace-turn">
      <section class="pace-upper" ref={upper}>
        <TurnUpper
          turn={turn}
          panel={panel}
          left={left}
          waiting={waiting}
          open={open}
          acted={(said = '') => acted(said, said)}
          heading={<TurnHeading turn={turn} panel={panel} isAwake={isAwake} />}
        />
      </section>
      <TurnControls
        turn={turn}
        toRework={waiting.length}
        mainRef={main}
        taps={taps}
        note={note}
        tapMain={tapMain}
        stop={stop}
        undo={undo}
        open={open}
      />
      <p class="visually-hidden" role="status">
        {spoken}
      </p>
      {Keys && (
        <Keys taps={taps} tapMain={tapMain} goBack={() => acted('')} say={(said) => acted(said, said)} />
      )}
    </div>
  );
}

/** What turns before left is offered here; no tap waits for it. */
const readLeft = async (bench: Bench) =>
  (await import('../../application/turn/left-to-rework')).leftToRework(bench);

/** The surface has its own keys; what goes beyond them, the first tap does not wait for. */
const loadKeys = async () => (await import('./pace-keys')).PaceKeys;
