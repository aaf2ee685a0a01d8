import type { LogRecord } from '../../domain/records/log-record';

/** A small place that answers at once, for records while the log does not. It is not the log. */
export interface ReserveShelf {
  /** Holds exactly these records; false when it has no room for them. */
  hold(records: readonly LogRecord[]): boolean;
  /** What it held when the page last went away. */
  read(): LogRecord[];
}
