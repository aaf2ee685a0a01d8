import type { RecordLog, WallRange } from '../application/ports/record-log';
import { inStreamOrder } from '../domain/records/in-stream-order';
import { isSameRecord } from '../domain/records/is-same-record';
import type { LogRecord } from '../domain/records/log-record';
import { recordKey } from '../domain/records/record-key';

/** The log in memory: for tests, and for a browser that refuses storage. It holds nothing past the page. */
export class InMemoryRecordLog implements RecordLog {
  private readonly records = new Map<string, LogRecord>();

  constructor(readonly device: string) {}

  async append(records: readonly LogRecord[]): Promise<void> {
    const keys = new Set(records.map(recordKey));
    const isTaken = (record: LogRecord) => {
      const there = this.records.get(recordKey(record));
      return there !== undefined && !isSameRecord(there, record);
    };
    if (keys.size < records.length || records.some(isTaken)) {
      throw new Error('append requires keys that no other record has');
    }
    for (const record of records) this.records.set(recordKey(record), structuredClone(record));
  }

  async readStream(stream: string): Promise<LogRecord[]> {
    const own = [...this.records.values()].filter((record) => record.stream === stream);
    return structuredClone(inStreamOrder(stream, own));
  }

  async readStarts(what: 'turn' | 'study' | 'lots', range?: WallRange): Promise<LogRecord[]> {
    return this.starts(what).filter(
      ({ stamp: { wallMs } }) => !range || (wallMs >= range.fromWallMs && wallMs <= range.toWallMs),
    );
  }

  async readLatestStarts(what: 'turn' | 'study' | 'lots', count: number): Promise<LogRecord[]> {
    return this.starts(what).reverse().slice(0, count);
  }

  async lastRecord(): Promise<LogRecord | null> {
    const own = [...this.records.values()].filter(({ device }) => device === this.device);
    return structuredClone(own.sort((a, b) => b.sequence - a.sequence)[0] ?? null);
  }

  async readNewest(count: number): Promise<LogRecord[]> {
    const last = (await this.lastRecord())?.sequence ?? 0;
    const newest = [...this.records.values()].filter(
      ({ device, sequence }) => device === this.device && sequence > last - count,
    );
    return structuredClone(newest.sort((a, b) => a.sequence - b.sequence));
  }

  async *readAll(): AsyncIterable<LogRecord[]> {
    const byKey = [...this.records.values()].sort((a, b) =>
      a.device === b.device ? a.sequence - b.sequence : a.device < b.device ? -1 : 1,
    );
    if (byKey.length > 0) yield structuredClone(byKey);
  }

  async count(): Promise<number> {
    return this.records.size;
  }

  async countByDevice(): Promise<ReadonlyMap<string, number>> {
    const counts = new Map<string, number>();
    for (const { device } of this.records.values()) counts.set(device, (counts.get(device) ?? 0) + 1);
    return counts;
  }

  async wake(): Promise<void> {}

  close(): void {}

  private starts(what: string): LogRecord[] {
    return structuredClone(
      [...this.records.values()]
        .filter(({ fact }) => 'starts' in fact && fact.starts === what)
        .sort((a, b) => a.stamp.wallMs - b.stamp.wallMs),
    );
  }
}
