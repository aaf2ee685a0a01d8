import type { ScreenAwake } from '../application/ports/screen-awake';

/** Keeps the screen on with the browser's wake lock, and asks again whenever the page is seen again. */
export function screenWakeLock(): ScreenAwake {
  let wanted = false;
  let lock: WakeLockSentinel | null = null;
  let tell: (awake: boolean) => void = () => {};

  const ask = async () => {
    if (!wanted || lock || document.visibilityState === 'hidden') return;
    try {
      lock = await navigator.wakeLock.request('screen');
      tell(true);
      lock.addEventListener('release', () => {
        lock = null;
        if (wanted) tell(false);
      });
      if (!wanted) await lock.release();
    } catch {
      tell(false);
    }
  };
  document.addEventListener('visibilitychange', ask);
  return {
    keep() {
      wanted = true;
      ask();
    },
    release() {
      wanted = false;
      lock?.release();
      tell(true);
    },
    onChange(call) {
      tell = call;
    },
  };
}
