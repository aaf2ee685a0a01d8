import type { Signal } from '@preact/signals';
import type { Bench } from './application/bench';
import { untoldRelease } from './application/release-seen';
import { tendUpdate } from './application/tend-update';
import { localJotter } from './device/local-jotter';
import { pagePresence } from './device/page-presence';
import { serviceWorkerUpdates } from './device/service-worker-updates';

/** What the frame tells of releases: each holds what to call when a person has answered, and null else. */
export interface ReleaseNews {
  /** A newer one waits. */
  readonly waiting: Signal<(() => void) | null>;
  /** This one is new here. */
  readonly untold: Signal<(() => void) | null>;
}

/** The parts of main.tsx that look for a newer release: a file of their own, beside the first screen's way. */
export function lookForUpdates(bench: () => Bench | null, { waiting, untold }: ReleaseNews): void {
  const update = serviceWorkerUpdates(
    document.documentElement.lang.slice(0, 2),
    () => bench()?.busy ?? false,
  );
  const presence = pagePresence();
  const jotter = localJotter('pacewright-app');
  const told = untoldRelease(jotter, __RELEASE__);
  if (told) {
    untold.value = () => {
      told();
      untold.value = null;
    };
  }
  update.onWaiting(() => {
    waiting.value = () => update.apply();
    const around = { bench, jotter, presence, release: __RELEASE__ };
    tendUpdate(update, around, (periodMs, call) => {
      const timer = setInterval(call, periodMs);
      return () => clearInterval(timer);
    });
  });
}
