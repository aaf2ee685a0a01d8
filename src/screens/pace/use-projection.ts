import { useComputed } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { recentTurns } from '../../application/turn/recent-turns';
import { type Projection, projectFinish } from '../../domain/turn/project-finish';
import type { Turn } from '../../domain/turn/turn';
import { turnNow } from '../../domain/turn/turn-now';
import { useApp } from '../app';
import { useNow } from '../use-now';

/** A range that moves with every second is read by nobody. */
const AGAIN_MS = 30_000;
/** What a tap shows is drawn first. */
const AFTER_MS = 150;

/** Where the turn is heading, reckoned beside the work: after each part, and twice a minute. */
export function useProjection(turn: Turn): Projection | null {
  const { bench } = useApp();
  const now = useNow();
  const [before, setBefore] = useState<readonly Turn[]>([]);
  const [found, setFound] = useState<Projection | null>(null);
  const halfMinute = useComputed(() => Math.floor(now.value.wallMs / AGAIN_MS)).value;
  useEffect(() => {
    let isHere = true;
    // Without the turns before, this one has to do.
    recentTurns(bench).then(
      (turns) => isHere && setBefore(turns),
      () => {},
    );
    return () => {
      isHere = false;
    };
  }, [bench, turn.id]);
  useEffect(
    () =>
      bench.clock.after(AFTER_MS, () => {
        const nowMs = turnNow(turn, bench.clock.now());
        setFound(projectFinish(turn, before, nowMs));
      }),
    [bench, turn, before, halfMinute],
  );
  return found;
}
