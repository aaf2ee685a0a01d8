import type { BackupFault } from '../application/ports/backup-fault';
import type { BackupSummary } from '../application/ports/backup-format';
import type { LogRecord } from '../domain/records/log-record';
import { RECORD_VERSION, upgradeRecord } from '../domain/records/upgrade-record';
import { type BackupHeader, readBackupHeader } from './backup-header';
import { type RecordShape, recordEnvelope, recordShape } from './backup-record-shape';
import { BackupRefusal } from './backup-refusal';
import { isObject } from './backup-shape';
import { BackupTally, END_MARK } from './backup-tally';

const LINE_FEED = 10;

/**
 * Reads the lines of a backup one by one and refuses the first that cannot be right. Whether all of them are
 * right is known at the end: the last line says what the file holds.
 */
export class BackupBody {
  private readonly tally = new BackupTally();
  // A byte order mark is no part of what was written, so it is not swallowed.
  private readonly decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  private header: BackupHeader | null = null;
  private last: LogRecord | null = null;
  /** Checksum of the last record as it was upgraded. */
  private upgradedChain = 0;
  private end: string | null = null;
  private line = 0;

  /** @returns the record of the line; null for the first line and the last one */
  take(bytes: Uint8Array): LogRecord | null {
    this.line += 1;
    if (this.end !== null) this.refuse({ code: 'more-after-end', line: this.line });
    const text = this.decoded(bytes);
    if (!this.header) {
      this.header = readBackupHeader(text);
      this.tally.take(bytes);
      if (bytes.at(-1) !== LINE_FEED) this.refuse({ code: 'cut-short', line: this.line });
      return null;
    }
    if (bytes.at(-1) !== LINE_FEED) this.refuse({ code: 'cut-short', line: this.line });
    if (text.startsWith(END_MARK)) {
      this.end = text.slice(0, -1);
      return null;
    }
    this.tally.take(bytes);
    return this.record(text);
  }

  /** What the file holds, once every line of it was taken. */
  finish(): BackupSummary {
    if (!this.header) throw new BackupRefusal({ code: 'not-a-backup' });
    if (this.end === null) this.refuse({ code: 'cut-short', line: this.line + 1 });
    const found = this.tally.endLine();
    const { release, device, madeAt } = this.header;
    const summary = this.tally.summary({ release, device, madeAt });
    if (this.end !== found) this.refuse(this.difference(summary));
    return summary;
  }

  private record(text: string): LogRecord {
    const value = this.parsed(text);
    const record = this.shaped(recordEnvelope(value));
    const { version } = this.header!;
    const { last } = this;
    if (last && !comesAfter(record, last)) this.refuse({ code: 'out-of-order', line: this.line });
    // Before anything else is done with what it holds: it may be nested a million deep.
    if (version === RECORD_VERSION) this.shaped(recordShape(record));
    this.last = record;
    const before = last?.device === record.device ? this.upgradedChain : 0;
    const upgraded = this.upgraded(record, version, before);
    if (version < RECORD_VERSION) this.shaped(recordShape(upgraded));
    this.upgradedChain = upgraded.chain;
    return upgraded;
  }

  private upgraded(record: LogRecord, version: number, before: number): LogRecord {
    try {
      const follows = this.tally.count(record);
      const upgraded = upgradeRecord(record, version, before);
      // A break of the chain stays one.
      return follows ? upgraded : { ...upgraded, chain: record.chain };
    } catch {
      // An upgrade expects facts of its version, and a damaged file may hold anything.
      return this.refuse({ code: 'not-a-record', line: this.line, where: '.fact' });
    }
  }

  private shaped(shape: RecordShape): LogRecord {
    const { line } = this;
    if (shape.ok) return shape.record;
    if ('where' in shape) return this.refuse({ code: 'not-a-record', line, where: shape.where });
    return this.refuse({ code: 'unknown-kind', line, kind: shape.kind, release: this.header!.release });
  }

  /** Why the last line is not the one that what was read comes to. */
  private difference(found: BackupSummary): BackupFault {
    const said = this.parsed(this.end!);
    if (!isObject(said) || typeof said.records !== 'number') {
      return { code: 'not-json', line: this.line };
    }
    const admitted = JSON.stringify(said.breaks) ?? '';
    const broken = found.breaks.find((each) => !admitted.includes(JSON.stringify(each)));
    if (broken) {
      const { device, sequence, why } = broken;
      return { code: why === 'missing' ? 'record-missing' : 'record-changed', device, sequence };
    }
    const { records } = found;
    return records === said.records
      ? { code: 'contents-changed' }
      : { code: 'counts-differ', said: said.records, found: records };
  }

  private decoded(bytes: Uint8Array): string {
    try {
      return this.decoder.decode(bytes);
    } catch {
      return this.refuse({ code: 'not-text', line: this.line });
    }
  }

  private parsed(text: string): unknown {
    try {
      return JSON.parse(text);
    } catch {
      return this.refuse({ code: 'not-json', line: this.line });
    }
  }

  private refuse(fault: BackupFault): never {
    throw new BackupRefusal(fault);
  }
}

/** One record at a time, in the order in which logs are read. */
function comesAfter(record: LogRecord, last: LogRecord): boolean {
  return record.device === last.device ? record.sequence > last.sequence : record.device > last.device;
}
