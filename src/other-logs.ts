import type { RecordLog } from './application/ports/record-log';
import type { ReserveShelf } from './application/ports/reserve-shelf';
import { localReserve } from './device/local-reserve';
import { randomName } from './device/random-name';
import { DEMO_DATABASE } from './storage/database-names';
import { InMemoryRecordLog } from './storage/in-memory-record-log';
import { IndexedDbRecordLog } from './storage/indexeddb-record-log';
import { UnopenedRecordLog } from './storage/unopened-record-log';

// Parts of main.tsx that most days nobody needs: logs other than the shop's own.

/** The invented shop's; filled where it is empty. */
export async function openDemoLog(): Promise<RecordLog> {
  const log = await IndexedDbRecordLog.open(DEMO_DATABASE, () => randomName('tablet'));
  if ((await log.count()) === 0) {
    const { fillDemo } = await import('./demo/fill-demo');
    await fillDemo(log);
  }
  return log;
}

/** In a browser without storage. */
export function memoryLog(): RecordLog {
  return new InMemoryRecordLog(randomName('tablet'));
}

/** While the shop's own does not open. */
export function unopenedLog(): RecordLog {
  return new UnopenedRecordLog(randomName('tablet'));
}

/** Its reserve: nothing may be taken from what lies there, and what comes is added. */
export function reserveBesides(): ReserveShelf {
  const before = localReserve.read();
  return { hold: (records) => localReserve.hold([...before, ...records]), read: () => [] };
}
