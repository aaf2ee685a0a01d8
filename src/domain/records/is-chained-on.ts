import { chainOf } from './chain';
import type { LogRecord } from './log-record';

/** Whether these records of one device follow on one another, and the first of them on the one with this checksum. */
export function isChainedOn(records: readonly LogRecord[], before: number): boolean {
  return records.every(
    (record, place) => chainOf(record, records[place - 1]?.chain ?? before) === record.chain,
  );
}
