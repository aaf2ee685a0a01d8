import type { LastingStorage } from '../application/ports/lasting-storage';

/** Asks the browser; a browser that cannot answer, or fails to, has promised nothing and says nothing. */
export const lastingStorage: LastingStorage = {
  async isGranted() {
    try {
      return (await navigator.storage?.persisted?.()) ?? null;
    } catch {
      return null;
    }
  },
  async ask() {
    try {
      return (await navigator.storage?.persist?.()) ?? null;
    } catch {
      return null;
    }
  },
};
