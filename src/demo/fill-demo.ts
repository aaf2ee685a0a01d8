import type { RecordLog } from '../application/ports/record-log';
import { demoRecords } from './demo-records';

/** Writes the invented shop into an empty log of its own, all or nothing: a page that is left meanwhile begins anew. */
export function fillDemo(log: RecordLog): Promise<void> {
  return log.append(demoRecords());
}
