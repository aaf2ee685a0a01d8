import type { DBSchema } from 'idb';
import type { LogRecord } from '../domain/records/log-record';

// DO NOT RENAME stores, indexes or key paths: see migrations.ts for how to change them.
export interface Schema extends DBSchema {
  records: {
    key: [device: string, sequence: number];
    value: LogRecord;
    indexes: {
      /** The records of a turn, a study, or the shop. */
      'by-stream': string;
      /** Only records that begin a turn or a study have the first part, so the index stays small. */
      'by-start': [starts: string, wallMs: number];
    };
  };
  /** About this tablet: its own name in the log. */
  tablet: {
    key: string;
    value: string;
  };
}
