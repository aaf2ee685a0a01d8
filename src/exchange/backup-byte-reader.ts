import type { BackupSource } from '../application/ports/backup-format';
import { BackupRefusal } from './backup-refusal';

type Bytes = Uint8Array<ArrayBuffer>;

const LINE_FEED = 10;

/** Reads a source from front to back, in pieces of the size that is asked for. */
export class BackupByteReader {
  private readonly reader: ReadableStreamDefaultReader<Bytes>;
  private waiting: Bytes = new Uint8Array();

  constructor(source: BackupSource) {
    try {
      this.reader = source.stream().getReader();
    } catch (error) {
      throw unreadable(error);
    }
  }

  /** Bytes up to and with the next line feed; null when there is none within the limit. */
  async line(limit: number): Promise<Bytes | null> {
    for (;;) {
      const feed = this.waiting.indexOf(LINE_FEED);
      if (feed >= limit || (feed < 0 && this.waiting.length >= limit)) return null;
      if (feed >= 0) return this.cut(feed + 1);
      if (!(await this.fill())) return null;
    }
  }

  /** So many bytes; fewer only where the source ends. */
  async take(count: number): Promise<Bytes> {
    const whole = new Uint8Array(count);
    let filled = 0;
    while (filled < count && (this.waiting.length > 0 || (await this.fill()))) {
      const piece = this.cut(Math.min(count - filled, this.waiting.length));
      whole.set(piece, filled);
      filled += piece.length;
    }
    return whole.subarray(0, filled);
  }

  async isAtEnd(): Promise<boolean> {
    return this.waiting.length === 0 && !(await this.fill());
  }

  async *rest(): AsyncGenerator<Bytes> {
    while (!(await this.isAtEnd())) yield this.cut(this.waiting.length);
  }

  /** Lets the source go, whether or not it was read to its end. */
  async close(): Promise<void> {
    await this.reader.cancel().catch(() => {});
  }

  private cut(count: number): Bytes {
    const piece = this.waiting.subarray(0, count);
    this.waiting = this.waiting.subarray(count);
    return piece;
  }

  /** Adds the source's next piece to what waits; false at its end. */
  private async fill(): Promise<boolean> {
    try {
      for (;;) {
        const { done, value } = await this.reader.read();
        if (done) return false;
        if (value.length === 0) continue;
        this.waiting = this.waiting.length === 0 ? value : joined(this.waiting, value);
        return true;
      }
    } catch (error) {
      throw unreadable(error);
    }
  }
}

function joined(first: Bytes, second: Bytes): Bytes {
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}

function unreadable(error: unknown): BackupRefusal {
  const problem = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return new BackupRefusal({ code: 'cannot-read', problem });
}
