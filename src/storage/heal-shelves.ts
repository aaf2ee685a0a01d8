import type { RecordLog } from '../application/ports/record-log';
import type { LogRecord } from '../domain/records/log-record';
import { healEnd } from './heal-end';
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

/** Gives each shelf what it lacks and the other has: from their ends where that is enough, else record by record. */
export async function healShelves(database: RecordLog, journal: Journal): Promise<Healing> {
  return (await healEnd(database, journal)) ?? (await healWhole(database, journal));
}

/** Keeps the numbers of both shelves in memory, and their records a batch at a time. */
async function healWhole(database: RecordLog, journal: Journal): Promise<Healing> {
  const inDatabase = new Keys();
  for await (const batch of database.readAll()) for (const record of batch) inDatabase.add(record);
  const inJournal = new Keys();
  let restored = 0;
  let damaged = 0;
  for await (const batch of journal.readAll()) {
    damaged += batch.damaged;
    // Of two lines with one number the first was there when the second was refused.
    const missing = batch.records.filter((record) => inJournal.add(record) && !inDatabase.has(record));
    restored += missing.length;
    for (const part of inBatches(missing)) await database.append(part);
  }
  let copied = 0;
  for await (const batch of database.readAll()) {
    const missing = batch.filter((record) => !inJournal.has(record));
    copied += missing.length;
    for (const part of inBatches(missing)) await journal.append(part, database.device);
  }
  return { restored, copied, damaged };
}

/** A million keys as texts are 100 MB; as numbers of a few devices a third of that. */
class Keys {
  private readonly of = new Map<string, Set<number>>();

  /** Whether it was not there before. */
  add({ device, sequence }: LogRecord): boolean {
    const known = this.of.get(device) ?? new Set();
    if (known.has(sequence)) return false;
    this.of.set(device, known.add(sequence));
    return true;
  }

  has({ device, sequence }: LogRecord): boolean {
    return this.of.get(device)?.has(sequence) ?? false;
  }
}

function* inBatches<Item>(items: readonly Item[]): Generator<Item[]> {
  for (let from = 0; from < items.length; from += BATCH) yield items.slice(from, from + BATCH);
}
