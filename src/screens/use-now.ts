import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Stamp } from '../domain/records/stamp';
import { useApp } from './app';

const TICK_MS = 200;

/**
 * The moment, renewed five times a second while the component is there. Only leaves use it, so that a tick
 * never draws a whole screen again. What is shown with it is computed from stamps, never counted.
 */
export function useNow(): ReadonlySignal<Stamp> {
  const { clock } = useApp().bench;
  const now = useMemo(() => signal(clock.now()), [clock]);
  useEffect(
    () =>
      clock.every(TICK_MS, () => {
        now.value = clock.now();
      }),
    [clock, now],
  );
  return now;
}
