import type { LogRecord } from '../../domain/records/log-record';
import { decodeLine, encodeLine, type OwnEnd } from './journal-line';

/** What the journal needs of a file: FileSystemSyncAccessHandle has it, and so has a test's array. */
export interface SyncFile {
  getSize(): number;
  read(buffer: Uint8Array, options: { at: number }): number;
  write(buffer: Uint8Array, options: { at: number }): number;
  truncate(size: number): void;
  flush(): void;
}

/** How far back the end is searched for a whole line: far above the longest record of a turn. */
const TAIL_BYTES = 1 << 20;
const CHUNK_BYTES = 1 << 20;
const LINE_FEED = 10;

/**
 * The second shelf: one file that only grows, a line a record, flushed with every append.
 *
 * Must be one file, made once: its name table is an engine like the one this shelf protects from, and is
 * written only when a file is made.
 * Must cut off a torn last line on opening: it was never acknowledged, and what follows must start afresh.
 */
export class JournalFile {
  private end = 0;
  private last: OwnEnd | null = null;

  constructor(private readonly file: SyncFile) {
    const size = file.getSize();
    const from = Math.max(0, size - TAIL_BYTES);
    const tail = this.bytes(from, size);
    const lastFeed = tail.lastIndexOf(LINE_FEED);
    this.end = from + lastFeed + 1;
    if (this.end < size) {
      file.truncate(this.end);
      file.flush();
    }
    // The last whole line that can be read says how far the journal goes.
    const lines = new TextDecoder().decode(tail.subarray(0, lastFeed + 1)).split('\n');
    for (const line of lines.reverse()) {
      const decoded = decodeLine(line);
      if (!decoded) continue;
      this.last = decoded.own;
      break;
    }
  }

  /** How far the tablet's own records go in the journal; null when it is empty. */
  get ownEnd(): OwnEnd | null {
    return this.last;
  }

  /** Writes the records and waits until the file system has them. */
  append(records: readonly LogRecord[], device: string): void {
    let own: OwnEnd = this.last?.device === device ? this.last : { device, sequence: 0 };
    let text = '';
    for (const record of records) {
      if (record.device === device) own = { device, sequence: Math.max(own.sequence, record.sequence) };
      text += encodeLine({ own, record });
    }
    const bytes = new TextEncoder().encode(text);
    let written = 0;
    while (written < bytes.length) {
      written += this.file.write(bytes.subarray(written), { at: this.end + written });
    }
    this.file.flush();
    this.end += bytes.length;
    this.last = own;
  }

  /** Every record that can be read, in batches, and how many lines could not. */
  *read(): Generator<{ records: LogRecord[]; damaged: number }> {
    const decoder = new TextDecoder();
    let rest = '';
    for (let at = 0; at < this.end; at += CHUNK_BYTES) {
      rest += decoder.decode(this.bytes(at, Math.min(this.end, at + CHUNK_BYTES)), { stream: true });
      const lines = rest.split('\n');
      rest = lines.pop()!;
      const decoded = lines.map(decodeLine);
      yield {
        records: decoded.flatMap((line) => (line ? [line.record] : [])),
        damaged: decoded.filter((line) => line === null).length,
      };
    }
  }

  private bytes(from: number, to: number): Uint8Array {
    const buffer = new Uint8Array(to - from);
    const got = this.file.read(buffer, { at: from });
    return buffer.subarray(0, got);
  }
}
