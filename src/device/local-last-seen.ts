import { ALL_TABLETS, type LastSeen, type Seen } from '../application/ports/last-seen';

/** DO NOT RENAME: what it says of a shop's log is all that is left when that is gone. */
const NAME = 'pacewright-last-seen';

/** In localStorage, which browsers keep apart from databases and files: `tablet:records:missing`, and a space between two. */
export const localLastSeen: LastSeen = {
  read() {
    try {
      // A total of an older release: `records missing`.
      const text = localStorage.getItem(NAME)?.replace(/^(\d+) (\d+)$/, `${ALL_TABLETS}:$1:$2`);
      const seen = new Map<string, Seen>();
      for (const each of text?.split(' ') ?? []) {
        const [, device, records, missing] = /^([^:]*):(\d+):(\d+)$/.exec(each) ?? [];
        if (device === undefined) return null;
        seen.set(device, { records: Number(records), missing: Number(missing) });
      }
      return seen.size > 0 ? seen : null;
    } catch {
      return null;
    }
  },
  set(seen) {
    try {
      const each = [...seen].map(([device, { records, missing }]) => `${device}:${records}:${missing}`);
      localStorage.setItem(NAME, each.join(' '));
    } catch {
      // A loss is then noticed by the snapshots alone.
    }
  },
};
