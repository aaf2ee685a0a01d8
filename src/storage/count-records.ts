import type { IDBPDatabase } from 'idb';
import type { Schema } from './database-schema';

/**
 * Records counted at a time. A tap's record waits for a count that was asked for before it, and a million in one go take
 * 1.4 s: with two such counts a tap would be said to be not saved.
 */
const STRETCH = 10_000;

type Use = <Result>(work: (database: IDBPDatabase<Schema>) => Promise<Result>) => Promise<Result>;

/** How many records the database holds, by tablet; what is written meanwhile may be in it or not. */
export async function countRecords(use: Use): Promise<ReadonlyMap<string, number>> {
  const records = new Map<string, number>();
  let from: IDBKeyRange | undefined;
  for (;;) {
    const stretch = await use(async (database) => {
      const { store, done } = database.transaction('records');
      // Numbers may be missing, and a tablet's end: the next key there is begins the next stretch.
      const first = (await store.openKeyCursor(from))?.key;
      const keys = first && IDBKeyRange.bound(first, [first[0], first[1] + STRETCH], false, true);
      const count = keys ? await store.count(keys) : 0;
      await done;
      return keys && { count, end: keys.upper };
    });
    if (!stretch) return records;
    const [device] = stretch.end;
    records.set(device, (records.get(device) ?? 0) + stretch.count);
    from = IDBKeyRange.lowerBound(stretch.end);
  }
}
