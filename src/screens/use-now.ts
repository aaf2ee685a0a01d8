import { type ReadonlySignal, signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Clock } from '../application/ports/clock';
import type { Stamp } from '../domain/records/stamp';
import { useApp } from './app';

const TICK_MS = 200;

/** The moment that somebody looks at, by its clock: figures that move together are drawn in one frame. */
const moments = new WeakMap<Clock, ReadonlySignal<Stamp>>();

/**
 * The moment, renewed five times a second while a component looks at it. Only leaves use it, so that a tick
 * never draws a whole screen again. What is shown with it is computed from stamps, never counted.
 */
export function useNow(): ReadonlySignal<Stamp> {
  const { clock } = useApp().bench;
  return useMemo(() => moments.get(clock) ?? ticking(clock), [clock]);
}

function ticking(clock: Clock): ReadonlySignal<Stamp> {
  let stop = () => {};
  const now = signal(clock.now(), {
    watched() {
      stop = clock.every(TICK_MS, () => {
        now.value = clock.now();
      });
    },
    unwatched() {
      stop();
      // It stands still from here on: whoever looks next begins anew.
      moments.delete(clock);
    },
  });
  moments.set(clock, now);
  return now;
}
