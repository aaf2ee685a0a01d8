import type { WriterLock } from '../application/ports/writer-lock';

/** A tab that has not handed over by then is asleep or stuck. */
const PATIENCE_MS = 3_000;

/**
 * The lock of the browser's lock manager, which a tab loses when it goes away, however it goes. Where the
 * browser has no such locks, this tab takes itself for the only one.
 */
export async function takeWriterLock(name: string): Promise<WriterLock> {
  const lockName = `${name}-writer`;
  let isHeld = false;
  let letGo: (() => void) | null = null;
  let finish: () => Promise<void> = async () => {};
  let taken: () => void = () => {};

  if (!('locks' in navigator)) {
    return { isHeld: true, takeOver: async () => {}, onAsked() {}, onTaken() {} };
  }

  /** Asks for the lock and holds it until it is let go or the page goes away; false when it was not given. */
  const acquire = (options: LockOptions) =>
    new Promise<boolean>((resolve) => {
      navigator.locks
        .request(lockName, options, (lock) => {
          isHeld = lock !== null;
          resolve(isHeld);
          if (!lock) return undefined;
          return new Promise<void>((done) => {
            letGo = done;
          });
        })
        .catch(() => {
          const wasHeld = isHeld;
          isHeld = false;
          if (wasHeld) taken();
          else resolve(false);
        });
    });

  const channel = new BroadcastChannel(lockName);
  channel.addEventListener('message', async ({ data }) => {
    if (data !== 'hand over' || !isHeld) return;
    await finish();
    isHeld = false;
    letGo?.();
  });

  await acquire({ ifAvailable: true });
  return {
    get isHeld() {
      return isHeld;
    },
    async takeOver() {
      if (isHeld) return;
      const waiting = new AbortController();
      const patience = setTimeout(() => waiting.abort(), PATIENCE_MS);
      const polite = acquire({ signal: waiting.signal });
      channel.postMessage('hand over');
      const handedOver = await polite;
      clearTimeout(patience);
      if (!handedOver) await acquire({ steal: true });
    },
    onAsked(call) {
      finish = call;
    },
    onTaken(call) {
      taken = call;
    },
  };
}
