import './pace.css';
import { useComputed } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { isLeftOpen } from '../../domain/turn/is-left-open';
import type { Turn } from '../../domain/turn/turn';
import { useApp } from '../app';
import { useNow } from '../use-now';
import { LeftOpen } from './left-open';
import { TurnInHand } from './turn-in-hand';
import { TurnSetup } from './turn-setup';
import { useScreenAwake } from './use-screen-awake';

type TurnView = FunctionComponent<{ turn: Turn }>;

/** Am I inside this part's time, ahead or behind? */
export function PaceScreen() {
  const { bench } = useApp();
  const turn = bench.turn.value;
  const isAwake = useScreenAwake(turn !== null && turn.status !== 'ended');
  const OwnRecord = useOwnRecord(turn !== null);
  const [goesOn, setGoesOn] = useState('');
  const now = useNow();
  // Drawn again when the answer changes, not with every tick.
  const wasLeft = useComputed(() => bench.turn.value !== null && isLeftOpen(bench.turn.value, now.value));

  if (!turn) return <TurnSetup />;
  if (turn.status === 'ended') return OwnRecord && <OwnRecord turn={turn} />;
  if (wasLeft.value && goesOn !== turn.id) return <LeftOpen turn={turn} goOn={() => setGoesOn(turn.id)} />;
  return <TurnInHand turn={turn} isAwake={isAwake} />;
}

/** Read once a turn runs, so that it is there at the end and no first tap of the day waits for it. */
function useOwnRecord(isWanted: boolean): TurnView | null {
  const [loaded, setLoaded] = useState<{ View: TurnView } | null>(null);
  useEffect(() => {
    if (isWanted) import('./own-record').then(({ OwnRecord }) => setLoaded({ View: OwnRecord }));
  }, [isWanted]);
  return loaded?.View ?? null;
}
