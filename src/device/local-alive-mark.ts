import type { AliveMark } from '../application/ports/alive-mark';

/** DO NOT RENAME: the page before an update has set it. */
const NAME = 'pacewright-alive';

/** In localStorage, which is written before the call returns and outlives a reload. Where it fails there is no mark. */
export const localAliveMark: AliveMark = {
  set(wallMs) {
    try {
      localStorage.setItem(NAME, String(wallMs));
    } catch {
      // A gap is then counted from the record before it.
    }
  },
  read() {
    try {
      const wallMs = Number(localStorage.getItem(NAME) ?? Number.NaN);
      return Number.isFinite(wallMs) ? wallMs : null;
    } catch {
      return null;
    }
  },
};
