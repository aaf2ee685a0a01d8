import type { RecordLog } from '../application/ports/record-log';
import type { ReserveShelf } from '../application/ports/reserve-shelf';
import type { LogRecord } from '../domain/records/log-record';

/**
 * Appends records, or puts them in reserve where the log refuses: the opening takes them in hand from there. How many
 * the log took.
 *
 * @throws what the log said, where the reserve has no room either
 */
export async function appendOrHold(
  records: readonly LogRecord[],
  log: RecordLog,
  reserve: ReserveShelf | null,
): Promise<number> {
  try {
    await log.append(records);
    return records.length;
  } catch (error) {
    const chains = new Set(records.map(({ chain }) => chain));
    const others = reserve?.read().filter(({ chain }) => !chains.has(chain)) ?? [];
    if (!reserve?.hold([...records, ...others])) throw error;
    return 0;
  }
}
