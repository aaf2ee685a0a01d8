import type { LogRecord } from './log-record';

/**
 * A record as one line of JSON, without its line feed: the same record always gives the same line, and two
 * records are word for word the same when their lines are. Facts keep the order in which they were written,
 * because their checksum was made in it.
 */
export function recordLine({ device, sequence, stream, stamp, fact, chain }: LogRecord): string {
  return JSON.stringify({ device, sequence, stream, stamp, fact, chain });
}
