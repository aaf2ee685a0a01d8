import type { LogRecord } from './log-record';

/** Names one record in a text: device and sequence, as `tablet-7:12`. */
export function recordKey({ device, sequence }: { device: string; sequence: number }): string {
  return `${device}:${sequence}`;
}

/** Whether two records of one key are the same record, written twice. */
export function isSameRecord(a: LogRecord, b: LogRecord): boolean {
  return a.chain === b.chain && a.stream === b.stream && JSON.stringify(a.fact) === JSON.stringify(b.fact);
}
