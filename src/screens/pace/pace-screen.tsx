import './pace.css';
import { useComputed } from '@preact/signals';
import { useRef, useState } from 'preact/hooks';
import { isLeftOpen } from '../../domain/turn/is-left-open';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';
import { useNow } from '../use-now';
import { useScreenAwake } from '../use-screen-awake';
import { TurnInHand } from './turn-in-hand';

/** Am I inside this part's time, ahead or behind? */
export function PaceScreen() {
  const { bench } = useApp();
  // Looked at, not asked for: a tick between a tap and its answer makes nothing wait.
  const inHand = bench.turn;
  const turn = inHand.value;
  const isAwake = useScreenAwake(turn !== null && turn.status !== 'ended');
  // Read once a turn runs, so that it is there at the end.
  const OwnRecord = useLazy(turn !== null, loadOwnRecord);
  const [goesOn, setGoesOn] = useState('');
  const now = useNow();
  // Drawn again when the answer changes, not with every tick.
  const wasLeft = useComputed(() => inHand.value !== null && isLeftOpen(inHand.value, now.value));

  const LeftOpen = useLazy(wasLeft.value, loadLeftOpen);
  const TurnSetup = useLazy(turn === null, loadTurnSetup);

  // The turn that was on the screen: whoever begins another one right after it has chosen already.
  const before = useRef(turn);
  if (!turn) return TurnSetup && <TurnSetup again={before.current} />;
  before.current = turn;
  if (turn.status === 'ended') return OwnRecord && <OwnRecord turn={turn} />;
  if (wasLeft.value && goesOn !== turn.id) {
    return LeftOpen && <LeftOpen turn={turn} goOn={() => setGoesOn(turn.id)} />;
  }
  return <TurnInHand turn={turn} isAwake={isAwake} />;
}

const loadOwnRecord = async () => (await import('./own-record')).OwnRecord;
const loadTurnSetup = async () => (await import('./turn-setup')).TurnSetup;
const loadLeftOpen = async () => (await import('./left-open')).LeftOpen;
