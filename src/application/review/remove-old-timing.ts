import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a time of the old method away. It stays in the log, with who wrote it and who took it away. */
export function removeOldTiming(bench: Bench, timing: string, by: string): void {
  bench.record(SHOP_STREAM, [{ kind: 'old-timing-removed', timing, by: by.trim() }]);
}
