import type { RecordLog } from '../application/ports/record-log';
import { groupBy } from '../domain/group-by';
import type { LogRecord } from '../domain/records/log-record';
import { recordKey } from '../domain/records/record-key';
import type { Journal } from './journal-client';

/** What opening found and mended. */
export interface Healing {
  /** Records the database had lost and the journal gave back. */
  readonly restored: number;
  /** Records the journal lacked and the database gave. */
  readonly copied: number;
  /** Lines of the journal that could not be read, where it had to be read whole. */
  readonly damaged: number;
}

/** A transaction of this many records keeps the page answering. */
const BATCH = 500;

/** Compares the two shelves record by record and gives each what it lacks. */
export async function healShelves(database: RecordLog, journal: Journal): Promise<Healing> {
  const { records, damaged } = await journal.readAll();
  const known = new Set<string>();
  const missingInJournal: LogRecord[] = [];
  const inTheJournal = new Set(records.map(recordKey));
  for await (const batch of database.readAll()) {
    for (const record of batch) {
      known.add(recordKey(record));
      if (!inTheJournal.has(recordKey(record))) missingInJournal.push(record);
    }
  }
  // A line may stand twice where a copy was cut short and made again.
  const missingInDatabase = [...groupBy(records, recordKey).values()]
    .map(([first]) => first!)
    .filter((record) => !known.has(recordKey(record)));
  for (const batch of inBatches(missingInDatabase)) await database.append(batch);
  for (const batch of inBatches(missingInJournal)) await journal.append(batch, database.device);
  return { restored: missingInDatabase.length, copied: missingInJournal.length, damaged };
}

function* inBatches<Item>(items: readonly Item[]): Generator<Item[]> {
  for (let from = 0; from < items.length; from += BATCH) yield items.slice(from, from + BATCH);
}
