import type { LogRecord } from '../../domain/records/log-record';
import { decodeLine, encodeLine, type OwnEnd, type OwnPlace } from './journal-line';

/** What the journal needs of a file: FileSystemSyncAccessHandle has it, and so has a test's array. */
export interface SyncFile {
  getSize(): number;
  read(buffer: Uint8Array, options: { at: number }): number;
  write(buffer: Uint8Array, options: { at: number }): number;
  truncate(size: number): void;
  flush(): void;
}

/** What one read of the journal gives. */
export interface JournalBatch {
  readonly records: LogRecord[];
  /** Lines that could not be read. */
  readonly damaged: number;
  /** Where the next read begins. */
  readonly next: number | null;
}

/** How far back the end is searched for a whole line: far above the longest record of a turn. */
const TAIL_BYTES = 1 << 20;
const CHUNK_BYTES = 1 << 20;
const LINE_FEED = 10;

/**
 * The second shelf: one file that only grows, a line a record. What was appended is with the system, so that no death
 * of the browser takes it back; `flush` makes it outlast a loss of power as well.
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
    this.last = this.readEnd();
  }

  /**
   * The last of the tablet's own records in the journal; null when it is empty. The last one written, which need not
   * have the highest number: of what another tab took the numbers, the database's records are written over it.
   */
  get ownEnd(): OwnEnd | null {
    return this.last;
  }

  /**
   * Writes the records. Those of another tablet are flushed as well: only the tablet's own ones are counted at the next
   * opening, so nobody would see that the others are missing here.
   */
  append(records: readonly LogRecord[], device: string): void {
    let own: OwnEnd = this.last?.device === device ? this.last : { device, sequence: 0, chain: 0 };
    let text = '';
    for (const record of records) {
      if (record.device === device) own = { device, sequence: record.sequence, chain: record.chain };
      text += encodeLine({ own, record });
    }
    const bytes = new TextEncoder().encode(text);
    let written = 0;
    while (written < bytes.length) {
      written += this.file.write(bytes.subarray(written), { at: this.end + written });
    }
    this.end += bytes.length;
    this.last = own;
    if (records.some((record) => record.device !== device)) this.flush();
  }

  /** Waits until the disk has what was written. */
  flush(): void {
    this.file.flush();
  }

  /**
   * The records written after the tablet's own one of this number, oldest first. Null where that one is not in
   * the last part of the file: it has to be read whole then.
   */
  since(own: OwnPlace): LogRecord[] | null {
    const records: LogRecord[] = [];
    for (const line of this.tail().reverse()) {
      const decoded = decodeLine(line);
      // Behind a line that cannot be read there is no telling what is missing.
      if (!decoded || decoded.own.device !== own.device) return null;
      if (decoded.own.sequence <= own.sequence) return records.reverse();
      records.push(decoded.record);
    }
    return null;
  }

  /** The records of the lines from here on, as many as a chunk holds; `next` is null behind the last one. */
  read(at: number): JournalBatch {
    for (let size = CHUNK_BYTES; ; size *= 2) {
      const bytes = this.bytes(at, Math.min(this.end, at + size));
      const lastFeed = bytes.lastIndexOf(LINE_FEED);
      if (lastFeed < 0 && at + size < this.end) continue;
      const next = at + lastFeed + 1;
      const decoded = linesOf(bytes.subarray(0, lastFeed + 1)).map(decodeLine);
      return {
        records: decoded.flatMap((line) => (line ? [line.record] : [])),
        damaged: decoded.filter((line) => line === null).length,
        next: next < this.end ? next : null,
      };
    }
  }

  /** The last whole line that can be read says how far the journal goes; the line of that record, which one it is. */
  private readEnd(): OwnEnd | null {
    let end: OwnEnd | null = null;
    for (const line of this.tail().reverse()) {
      const decoded = decodeLine(line);
      if (!decoded) continue;
      end ??= { ...decoded.own, chain: decoded.own.sequence === 0 ? 0 : null };
      const { device, sequence, chain } = decoded.record;
      if (end.sequence === 0) break;
      if (device === end.device && sequence === end.sequence) return { device, sequence, chain };
    }
    return end;
  }

  /** The whole lines at the end of the file; the first one may have lost its beginning. */
  private tail(): string[] {
    return linesOf(this.bytes(Math.max(0, this.end - TAIL_BYTES), this.end));
  }

  private bytes(from: number, to: number): Uint8Array {
    const buffer = new Uint8Array(to - from);
    const got = this.file.read(buffer, { at: from });
    return buffer.subarray(0, got);
  }
}

function linesOf(bytes: Uint8Array): string[] {
  const lines = new TextDecoder().decode(bytes).split('\n');
  lines.pop();
  return lines;
}
