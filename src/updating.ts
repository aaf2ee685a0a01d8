import type { Bench } from './application/bench';
import { tendUpdate } from './application/tend-update';
import { localJotter } from './device/local-jotter';
import { pagePresence } from './device/page-presence';
import { serviceWorkerUpdates } from './device/service-worker-updates';

/** The parts of main.tsx that look for a newer release: a file of their own, beside the first screen's way. */
export function lookForUpdates(bench: () => Bench | null, tell: (take: () => void) => void): void {
  const update = serviceWorkerUpdates();
  const presence = pagePresence();
  update.onWaiting(() => {
    tell(() => update.apply());
    const around = { bench, jotter: localJotter('pacewright-app'), presence, release: __RELEASE__ };
    tendUpdate(update, around, (periodMs, call) => {
      const timer = setInterval(call, periodMs);
      return () => clearInterval(timer);
    });
  });
}
