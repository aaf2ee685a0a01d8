import type { LogRecord } from '../../domain/records/log-record';

/**
 * Where records are kept. Every implementation passes the same contract suite.
 *
 * Must write all records of one call or none of them.
 * Must refuse a key that another record has, with the whole call.
 * Must take a record that is there already, word for word, as written: it comes again after an unclear answer.
 * Must not settle `append` before the records are where a kill of the browser cannot reach them.
 * Must give back what was written, unchanged.
 */
export interface RecordLog {
  /** This tablet's own name in the log. */
  readonly device: string;
  append(records: readonly LogRecord[]): Promise<void>;
  /** The records of one stream, in the order of inStreamOrder. */
  readStream(stream: string): Promise<LogRecord[]>;
  /** The records that began a turn, a study or a day of lots in this span of wall time, oldest first, ends included. */
  readStarts(what: 'turn' | 'study' | 'lots', range?: WallRange): Promise<LogRecord[]>;
  /** The newest records that began one of these, newest first. */
  readLatestStarts(what: 'turn' | 'study' | 'lots', count: number): Promise<LogRecord[]>;
  /** The newest record of this device; null when it has none. */
  lastRecord(): Promise<LogRecord | null>;
  /** The newest records of this device, as many as there are up to a count, oldest first. */
  readNewest(count: number): Promise<LogRecord[]>;
  /** Everything, in batches, by device and sequence. */
  readAll(): AsyncIterable<LogRecord[]>;
  count(): Promise<number>;
  /** The same for each tablet that has any. */
  countByDevice(): Promise<ReadonlyMap<string, number>>;
  /** The page is seen again: looks whether the storage still answers, before the next record is written. */
  wake(): Promise<void>;
  close(): void;
}

export interface WallRange {
  readonly fromWallMs: number;
  readonly toWallMs: number;
}
