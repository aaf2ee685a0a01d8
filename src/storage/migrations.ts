import type { IDBPDatabase, IDBPTransaction } from 'idb';
import type { Schema } from './database-schema';

type Upgrade = IDBPTransaction<Schema, ('records' | 'tablet')[], 'versionchange'>;

export interface Migration {
  /** What it is for. A name is never used again. */
  readonly name: string;
  /** Synchronous: an error must abort the upgrade, and one thrown after an await would not. */
  readonly change: (database: IDBPDatabase<Schema>, upgrade: Upgrade) => void;
}

/** In order; the version of a database is the number of migrations it has had. Append only. */
export const migrations: readonly Migration[] = [
  {
    name: 'begin-the-log',
    change(database) {
      const records = database.createObjectStore('records', { keyPath: ['device', 'sequence'] });
      records.createIndex('by-stream', 'stream');
      records.createIndex('by-start', ['fact.starts', 'stamp.wallMs']);
      database.createObjectStore('tablet');
    },
  },
];
