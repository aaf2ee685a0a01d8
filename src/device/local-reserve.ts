import type { ReserveShelf } from '../application/ports/reserve-shelf';
import type { LogRecord } from '../domain/records/log-record';

/** DO NOT RENAME: a tablet may hold unsaved records under it. */
const NAME = 'pacewright-reserve';
/** Browsers give 5 MB; a reserve that grows past this would be a second log. */
const MOST_CHARACTERS = 1_000_000;

/** The reserve in localStorage, which is written before the call returns. */
export const localReserve: ReserveShelf = {
  hold(records) {
    try {
      const text = JSON.stringify(records);
      if (records.length === 0) localStorage.removeItem(NAME);
      else if (text.length > MOST_CHARACTERS) return false;
      else localStorage.setItem(NAME, text);
      return true;
    } catch {
      return false;
    }
  },
  read() {
    try {
      const held: LogRecord[] = JSON.parse(localStorage.getItem(NAME) ?? '[]');
      return Array.isArray(held) ? held : [];
    } catch {
      return [];
    }
  },
};
