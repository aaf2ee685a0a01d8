import type { LastSeen } from '../application/ports/last-seen';

/** DO NOT RENAME: what it says of a shop's log is all that is left when that is gone. */
const NAME = 'pacewright-last-seen';

/** In localStorage, which browsers keep apart from databases and files. */
export const localLastSeen: LastSeen = {
  read() {
    try {
      const [, records, missing] = /^(\d+) (\d+)$/.exec(localStorage.getItem(NAME) ?? '') ?? [];
      return records && missing ? { records: Number(records), missing: Number(missing) } : null;
    } catch {
      return null;
    }
  },
  set({ records, missing }) {
    try {
      localStorage.setItem(NAME, `${records} ${missing}`);
    } catch {
      // A loss is then noticed by the snapshots alone.
    }
  },
};
