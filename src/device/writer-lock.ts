import type { WriterLock } from '../application/ports/writer-lock';

/**
 * The lock of the browser's lock manager, which a tab loses when it goes away, however it goes. Where the
 * browser has no such locks, this tab takes itself for the only one.
 */
export async function takeWriterLock(name: string): Promise<WriterLock> {
  const lockName = `${name}-writer`;
  let isHeld = false;
  let letGo: (() => void) | null = null;
  let finish: () => Promise<void> = async () => {};
  let opened: () => void;
  /** A tab that is asked while it opens hands over once it has opened: it may write before that. */
  const opening = new Promise<void>((resolve) => {
    opened = resolve;
  });
  let taken: () => void = () => {};

  if (!('locks' in navigator)) {
    return { isHeld: true, takeOver: async () => {}, onAsked() {}, onTaken() {} };
  }

  /** Asks for the lock and holds it until it is let go or the page goes away; false when it was not given. */
  const acquire = (options: LockOptions) =>
    new Promise<boolean>((resolve) => {
      // Of this request: one that nobody answered says nothing about a lock that another one was given.
      let wasGiven = false;
      navigator.locks
        .request(lockName, options, (lock) => {
          wasGiven = lock !== null;
          isHeld = wasGiven;
          resolve(wasGiven);
          if (!lock) return undefined;
          return new Promise<void>((done) => {
            letGo = done;
          });
        })
        .catch(() => {
          if (!wasGiven) return resolve(false);
          isHeld = false;
          taken();
        });
    });

  const channel = new BroadcastChannel(lockName);
  channel.addEventListener('message', async ({ data }) => {
    if (data !== 'hand over' || !isHeld) return;
    await opening;
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
      // A tab that writes never needs it.
      const { takeOverLock } = await import('./take-over-lock');
      await takeOverLock(
        acquire,
        () => channel.postMessage('hand over'),
        () => isHeld,
      );
    },
    onAsked(call) {
      finish = call;
      opened();
    },
    onTaken(call) {
      taken = call;
    },
  };
}
