import { elapsedMs } from './elapsed-ms';
import type { LogRecord } from './log-record';
import type { Stamp } from './stamp';

/** A record and its place in its stream, in milliseconds since the stream's first record. */
export interface PlacedRecord {
  readonly record: LogRecord;
  readonly atMs: number;
}

/**
 * Puts a stream's records on one line of elapsed time, by the clocks of the tablet that began it: what is added on
 * another one, whose clocks are others, takes no time.
 */
export function placeOnTimeline(records: readonly LogRecord[]): PlacedRecord[] {
  let previous: Stamp | null = null;
  let atMs = 0;
  return records.map((record) => {
    const { stamp } = record;
    if (record.device === records[0]!.device) {
      if (previous) atMs += spentMs(previous, record);
      // A tap that waited while a heartbeat was recorded is older than that one: the line does not step back.
      if (previous?.run !== stamp.run || stamp.monoMs >= previous.monoMs) previous = stamp;
    }
    return { record, atMs };
  });
}

/**
 * The time from a moment to a record. Inside one run the monotonic clock measures, and a `slept` record carries the
 * time for which it stood still. Across runs the wall clock does: a sleep is in it, and so is what it was set by.
 */
function spentMs(from: Stamp, { stamp, fact }: LogRecord): number {
  if (from.run !== stamp.run && 'byMs' in fact) return Math.max(0, stamp.wallMs - from.wallMs - fact.byMs);
  const sleptMs = from.run === stamp.run && fact.kind === 'slept' ? fact.sleptMs : 0;
  return elapsedMs(from, stamp) + sleptMs;
}
