import type { LogRecord } from './log-record';

/** Whether two records of one key are the same record, written twice. */
export function isSameRecord(a: LogRecord, b: LogRecord): boolean {
  return a.chain === b.chain && a.stream === b.stream && JSON.stringify(a.fact) === JSON.stringify(b.fact);
}
