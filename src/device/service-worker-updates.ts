import { Workbox } from 'workbox-window';
import type { AppUpdate } from '../application/ports/app-update';

const LOOK_AGAIN_MS = 6 * 3_600_000;
/** A worker that has not taken over by then will not say so. */
const PATIENCE_MS = 5_000;

/**
 * The page's side of the service worker. A newer release is fetched in the background and waits; it takes
 * over only when `apply` is called, never by itself.
 *
 * @param language the one that is spoken; its words are kept on the tablet
 * @param isBusy asked before the page is reloaded: something is being timed, perhaps since the release was taken only
 */
export function serviceWorkerUpdates(language: string, isBusy: () => boolean): AppUpdate {
  let waiting = false;
  let tellWaiting: () => void = () => {};
  const workbox = new Workbox('./sw.js');
  workbox.addEventListener('waiting', () => {
    if (!waiting) tellWaiting();
    waiting = true;
  });
  workbox.register();
  // The one that serves this page or the next: on a first visit it begins after the words were brought.
  navigator.serviceWorker.ready.then(({ active }) => active?.postMessage({ type: 'SPOKEN', language }));
  // A tablet's page is open for days and never navigates, so it has to look for itself.
  const look = () => workbox.update().catch(() => {});
  setInterval(look, LOOK_AGAIN_MS);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') look();
  });
  return {
    onWaiting(call) {
      tellWaiting = call;
      if (waiting) call();
    },
    apply() {
      // The page goes on as it is, with the files of its own release, until somebody asks again.
      const reload = () => isBusy() || location.reload();
      // Reloading earlier would meet the old page with the new files.
      workbox.addEventListener('controlling', reload);
      workbox.messageSkipWaiting();
      setTimeout(reload, PATIENCE_MS);
    },
  };
}
