import { elapsedMs } from './elapsed-ms';
import type { LogRecord } from './log-record';
import type { Stamp } from './stamp';

/** A record and its place in its stream, in milliseconds since the stream's first record. */
export interface PlacedRecord {
  readonly record: LogRecord;
  readonly atMs: number;
}

/**
 * Puts a stream's records on one line of elapsed time. A `slept` record carries the time for which
 * the monotonic clock stood still, so that sleep is on the line exactly once.
 */
export function placeOnTimeline(records: readonly LogRecord[]): PlacedRecord[] {
  let previous: Stamp | null = null;
  let atMs = 0;
  return records.map((record) => {
    if (previous) atMs += elapsedMs(previous, record.stamp);
    if (record.fact.kind === 'slept') atMs += record.fact.sleptMs;
    previous = record.stamp;
    return { record, atMs };
  });
}
