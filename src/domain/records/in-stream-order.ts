import { inOrder } from './in-order';
import type { LogRecord } from './log-record';
import { recordKey } from './record-key';

/**
 * The records of one stream in the order in which they are read. The record that began a turn or a study
 * comes first, also where another tablet, whose clock is behind, added to it later.
 */
export function inStreamOrder(stream: string, records: readonly LogRecord[]): LogRecord[] {
  const isStart = (record: LogRecord) => recordKey(record) === stream;
  return inOrder(records).sort((a, b) => Number(isStart(b)) - Number(isStart(a)));
}
