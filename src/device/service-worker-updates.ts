import { Workbox } from 'workbox-window';
import type { AppUpdate } from '../application/ports/app-update';

const LOOK_AGAIN_MS = 6 * 3_600_000;

/**
 * The page's side of the service worker. A newer release is fetched in the background and waits; it takes
 * over only when `apply` is called, never by itself.
 */
export function serviceWorkerUpdates(): AppUpdate {
  let waiting = false;
  let ready = false;
  let tellWaiting: () => void = () => {};
  let tellReady: () => void = () => {};
  const workbox = new Workbox('./sw.js');
  workbox.addEventListener('waiting', () => {
    waiting = true;
    tellWaiting();
  });
  workbox.addEventListener('activated', () => {
    ready = true;
    tellReady();
  });
  workbox.register();
  // A tablet's page is open for days and never navigates, so it has to look for itself.
  const look = () => workbox.update().catch(() => {});
  setInterval(look, LOOK_AGAIN_MS);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') look();
  });
  if (navigator.serviceWorker.controller) ready = true;
  return {
    onWaiting(call) {
      tellWaiting = call;
      if (waiting) call();
    },
    onOfflineReady(call) {
      tellReady = call;
      if (ready) call();
    },
    apply() {
      // Reloading earlier would meet the old page with the new files.
      workbox.addEventListener('controlling', () => location.reload());
      workbox.messageSkipWaiting();
      setTimeout(() => location.reload(), 5_000);
    },
  };
}
