import { type IDBPDatabase, openDB } from 'idb';
import type { Schema } from './database-schema';
import { type Migration, migrations } from './migrations';

export interface OpeningEvents {
  /** Another tab holds an older version open: the upgrade waits for it. */
  readonly blocked?: () => void;
  /** A newer version wants the database, and waits until this one closes it. */
  readonly wanted?: () => void;
  /** The browser closed the database by itself. */
  readonly lost?: () => void;
}

/** Opens a database and brings it up to date, one named migration after the other. */
export function openDatabase(
  name: string,
  events: OpeningEvents = {},
  known: readonly Migration[] = migrations,
): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, known.length, {
    upgrade(database, oldVersion, _newVersion, transaction) {
      for (const { change } of known.slice(oldVersion)) change(database, transaction);
    },
    blocked: () => events.blocked?.(),
    blocking: () => events.wanted?.(),
    terminated: () => events.lost?.(),
  });
}
