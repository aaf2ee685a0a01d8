import type { LogRecord } from './log-record';

/**
 * The order in which records of several devices are read: by wall clock, then device, then sequence.
 * It orders, it never measures; records of one device keep their sequence even where its clock was
 * set back, because a device's own order is a fact and its clock is not.
 */
export function compareRecords(a: LogRecord, b: LogRecord): number {
  if (a.device === b.device) return a.sequence - b.sequence;
  return a.stamp.wallMs - b.stamp.wallMs || (a.device < b.device ? -1 : 1);
}
