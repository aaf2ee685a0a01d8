import { checksum } from './checksum';
import type { LogRecord } from './log-record';

/**
 * The checksum of a record, going on from the record before it on the same device: one record missing,
 * doubled, changed or out of place breaks the chain there. It finds damage, not deceit.
 */
export function chainOf(record: Omit<LogRecord, 'chain'>, before: number): number {
  const { device, sequence, stream, stamp, fact } = record;
  return checksum(JSON.stringify([device, sequence, stream, stamp, fact]), before);
}
