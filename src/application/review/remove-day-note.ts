import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a note off its day. It stays in the log, with who wrote it and who took it away. */
export function removeDayNote(bench: Bench, note: string, by: string): void {
  bench.record(SHOP_STREAM, [{ kind: 'day-note-removed', note, by: by.trim() }]);
}
