import { type IDBPDatabase, openDB } from 'idb';
import type { Schema } from './database-schema';
import { DATABASE_VERSION, migrations } from './migrations';

export interface OpeningEvents {
  /** Another tab holds an older version open: the upgrade waits for it. */
  readonly blocked?: () => void;
  /** The browser closed the database by itself, or a newer version wants it. */
  readonly lost?: () => void;
}

/** Opens a database and brings it up to date, one named migration after the other. */
export function openDatabase(name: string, events: OpeningEvents = {}): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, DATABASE_VERSION, {
    upgrade(database, oldVersion, _newVersion, transaction) {
      for (const { change } of migrations.slice(oldVersion)) change(database, transaction);
    },
    blocked: () => events.blocked?.(),
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      events.lost?.();
    },
    terminated: () => events.lost?.(),
  });
}
