import type { RecordLog } from '../application/ports/record-log';
import { demoRecords } from './demo-records';

/** Records a transaction takes: small enough that the page answers in between. */
const BATCH = 1_000;

/** Writes the invented shop into an empty log of its own. */
export async function fillDemo(log: RecordLog): Promise<void> {
  const records = demoRecords();
  for (let from = 0; from < records.length; from += BATCH) {
    await log.append(records.slice(from, from + BATCH));
  }
}
