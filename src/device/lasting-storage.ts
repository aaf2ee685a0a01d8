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
  async roomBytes() {
    try {
      const { quota, usage } = (await navigator.storage?.estimate?.()) ?? {};
      return quota === undefined ? null : Math.max(0, quota - (usage ?? 0));
    } catch {
      return null;
    }
  },
  isForgetfulTab() {
    // The property is Apple's own, and only the browsers of its tablets and phones have it.
    const { standalone } = navigator as Navigator & { readonly standalone?: boolean };
    return (
      standalone === false && !matchMedia('(display-mode: standalone), (display-mode: fullscreen)').matches
    );
  },
};
