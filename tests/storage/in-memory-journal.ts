import type { LogRecord } from '../../src/domain/records/log-record';
import { JournalFile, type SyncFile } from '../../src/storage/journal/journal-file';
import type { Journal } from '../../src/storage/journal-client';

/** A file in memory that a test can cut and damage. */
export class ArrayFile implements SyncFile {
  bytes = new Uint8Array(0);
  flushes = 0;

  getSize(): number {
    return this.bytes.length;
  }
  read(buffer: Uint8Array, { at }: { at: number }): number {
    const part = this.bytes.subarray(at, at + buffer.length);
    buffer.set(part);
    return part.length;
  }
  write(buffer: Uint8Array, { at }: { at: number }): number {
    const grown = new Uint8Array(Math.max(this.bytes.length, at + buffer.length));
    grown.set(this.bytes);
    grown.set(buffer, at);
    this.bytes = grown;
    return buffer.length;
  }
  truncate(size: number): void {
    this.bytes = this.bytes.slice(0, size);
  }
  flush(): void {
    this.flushes += 1;
  }
}

/** The journal's own code on such a file, with the page's interface. */
export function journalOn(file: ArrayFile): Journal {
  const journal = new JournalFile(file);
  return {
    get ownEnd() {
      return journal.ownEnd;
    },
    async append(records, device) {
      journal.append(records, device);
    },
    async since(own) {
      return journal.since(own);
    },
    async *readAll() {
      for (let at: number | null = 0; at !== null; ) {
        const batch = journal.read(at);
        yield batch;
        at = batch.next;
      }
    },
    close() {},
  };
}

/** What a journal holds, put together. */
export async function contentOf(journal: Pick<Journal, 'readAll'>) {
  const records: LogRecord[] = [];
  let damaged = 0;
  for await (const batch of journal.readAll()) {
    records.push(...batch.records);
    damaged += batch.damaged;
  }
  return { records, damaged };
}
