import type { RecordLog } from './ports/record-log';
import type { ReserveShelf } from './ports/reserve-shelf';

/**
 * Moves what an earlier page could not save from the reserve into the log. The log takes what it has already
 * as written, so a move that is cut short is made again without harm.
 */
export async function takeFromReserve(log: RecordLog, reserve: ReserveShelf | null): Promise<void> {
  const held = reserve?.read() ?? [];
  if (held.length === 0) return;
  await log.append(held);
  reserve?.hold([]);
}
