import type { Fact } from '../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { everythingIn } from './backup-files';

/** The same log after its first records were damaged, so that they count and go into no copy. */
export async function damagedLog(log: InMemoryRecordLog, damaged: number): Promise<InMemoryRecordLog> {
  const after = new InMemoryRecordLog(log.device);
  const unreadable = { kind: 'person-added' } as Fact;
  const records = await everythingIn(log);
  await after.append(records.map((each, place) => (place < damaged ? { ...each, fact: unreadable } : each)));
  return after;
}
