/**
 * Only one tab may write: two would number their records alike. Resolves to true when this tab is the
 * writer, for as long as it lives; to false when another tab is. Where the browser has no locks, this tab
 * takes itself for the only one.
 */
export function takeWriterLock(name: string): Promise<boolean> {
  if (!('locks' in navigator)) return Promise.resolve(true);
  return new Promise((resolve) => {
    navigator.locks
      .request(`${name}-writer`, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        // Held until the page goes away.
        return lock ? new Promise<never>(() => {}) : undefined;
      })
      .catch(() => resolve(true));
  });
}
