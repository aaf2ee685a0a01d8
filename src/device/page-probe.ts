import type { TabletProbe } from '../application/ports/tablet-probe';
import { saveTimes } from './save-probe';

export const pageProbe: TabletProbe = {
  get browser() {
    return navigator.userAgent;
  },
  get screen() {
    return `${innerWidth} × ${innerHeight}, × ${devicePixelRatio}`;
  },
  async keepsScreenOn() {
    if (!('wakeLock' in navigator)) return 'cannot';
    try {
      await (await navigator.wakeLock.request('screen')).release();
      return 'kept';
    } catch {
      return 'refused';
    }
  },
  isOffline: () => Boolean(navigator.serviceWorker?.controller),
  saveTimes,
};
