import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { KeptDay, SummaryMark, SummaryShelf } from '../../application/ports/summary-shelf';

interface Schema extends DBSchema {
  days: { key: string; value: KeptDay; indexes: { 'by-turn': string } };
  mark: { key: 'mark'; value: SummaryMark & { readonly release: string } };
}

type Writing = ReturnType<typeof writing>;

/**
 * Summaries in a database of their own: they are no records, no copy holds them, and an upgrade of the log never
 * waits for them. What is in it can be made again, so a next version may begin with empty stores.
 */
export class IndexedDbSummaryShelf implements SummaryShelf {
  private constructor(
    private readonly database: IDBPDatabase<Schema>,
    private readonly release: string,
  ) {}

  /** @param release that made the summaries: those of another are worth nothing, whatever formula was changed in it */
  static async open(name: string, release: string): Promise<IndexedDbSummaryShelf> {
    const database = await openDB<Schema>(name, 1, {
      upgrade(upgraded) {
        const days = upgraded.createObjectStore('days', { keyPath: 'day' });
        days.createIndex('by-turn', 'turns', { multiEntry: true });
        upgraded.createObjectStore('mark');
      },
      blocking(_current, _wanted, event) {
        (event.target as IDBDatabase).close();
      },
    });
    return new IndexedDbSummaryShelf(database, release);
  }

  async readMark(): Promise<SummaryMark | null> {
    const found = await this.database.get('mark', 'mark');
    if (found?.release !== this.release) return null;
    const { sequence, terms } = found;
    return { sequence, terms };
  }

  readDays(from: string, to: string): Promise<KeptDay[]> {
    return this.database.getAll('days', IDBKeyRange.bound(from, to));
  }

  async dropTurns(turns: readonly string[], mark: SummaryMark): Promise<void> {
    await this.change(async ({ days, marks }) => {
      const dropped = turns.map(async (turn) => {
        const key = await days.index('by-turn').getKey(turn);
        if (key !== undefined) await days.delete(key);
      });
      await Promise.all([...dropped, marks.put(this.marked(mark), 'mark')]);
    });
  }

  async clear(mark: SummaryMark | null): Promise<void> {
    await this.change(async ({ days, marks }) => {
      await Promise.all([days.clear(), mark ? marks.put(this.marked(mark), 'mark') : marks.delete('mark')]);
    });
  }

  async keep(kept: readonly KeptDay[]): Promise<void> {
    await this.change(async ({ days }) => {
      await Promise.all(kept.map((day) => days.put(day)));
    });
  }

  private marked(mark: SummaryMark): SummaryMark & { readonly release: string } {
    return { ...mark, release: this.release };
  }

  private async change(work: (stores: Writing) => Promise<void>): Promise<void> {
    const { done, ...stores } = writing(this.database);
    await Promise.all([work({ done, ...stores }), done]);
  }
}

function writing(database: IDBPDatabase<Schema>) {
  const transaction = database.transaction(['days', 'mark'], 'readwrite', { durability: 'strict' });
  return {
    days: transaction.objectStore('days'),
    marks: transaction.objectStore('mark'),
    done: transaction.done,
  };
}
