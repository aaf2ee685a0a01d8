import './pace.css';
import { useComputed } from '@preact/signals';
import { useState } from 'preact/hooks';
import { isLeftOpen } from '../../domain/turn/is-left-open';
import { useApp } from '../app';
import { useNow } from '../use-now';
import { LeftOpen } from './left-open';
import { OwnRecord } from './own-record';
import { TurnInHand } from './turn-in-hand';
import { TurnSetup } from './turn-setup';
import { useScreenAwake } from './use-screen-awake';

/** Am I inside this part's time, ahead or behind? */
export function PaceScreen() {
  const { bench } = useApp();
  const turn = bench.turn.value;
  const isAwake = useScreenAwake(turn !== null && turn.status !== 'ended');
  const [goesOn, setGoesOn] = useState('');
  const now = useNow();
  // Drawn again when the answer changes, not with every tick.
  const wasLeft = useComputed(() => bench.turn.value !== null && isLeftOpen(bench.turn.value, now.value));

  if (!turn) return <TurnSetup />;
  if (turn.status === 'ended') return <OwnRecord turn={turn} />;
  if (wasLeft.value && goesOn !== turn.id) return <LeftOpen turn={turn} goOn={() => setGoesOn(turn.id)} />;
  return <TurnInHand turn={turn} isAwake={isAwake} />;
}
