import type { IDBPDatabase } from 'idb';
import { isSameRecord } from '../domain/records/is-same-record';
import type { LogRecord } from '../domain/records/log-record';
import type { Schema } from './database-schema';

type Use = <Result>(work: (database: IDBPDatabase<Schema>) => Promise<Result>) => Promise<Result>;

/**
 * Of records that were refused because a key was taken, those that are not there.
 *
 * @throws the given refusal, where another record has the key
 */
export async function missingRecords(
  records: readonly LogRecord[],
  refusal: DOMException,
  use: Use,
): Promise<LogRecord[]> {
  const there = await use((database) => {
    const { store } = database.transaction('records');
    return Promise.all(records.map(({ device, sequence }) => store.get([device, sequence])));
  });
  const isClash = there.some((found, place) => found && !isSameRecord(found, records[place]!));
  // A call that holds a key twice finds none of them there.
  if (isClash || there.every((found) => !found)) throw refusal;
  return records.filter((_, place) => !there[place]);
}
