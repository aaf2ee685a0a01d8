import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { BackupAbout, BackupSummary, DeviceCount } from '../application/ports/backup-format';
import { type ChainBreak, ChainCheck } from '../domain/records/chain-check';
import type { LogRecord } from '../domain/records/log-record';

/** A log that broke everywhere would otherwise be told of in a line as long as the log. */
const MOST_BREAKS = 100;
/** How the last line begins; no record's line does. */
export const END_MARK = '{"end":';

/**
 * Follows a backup line by line, when it is written and when it is read: both come to the same last line, or
 * the file is not what was written. It counts in constant memory.
 *
 * SHA-256 by a library, because the browser's own digest wants all bytes at once.
 */
export class BackupTally {
  private readonly hash = sha256.create();
  private readonly devices: { device: string; records: number; first: number; last: number }[] = [];
  private readonly chain = new ChainCheck();
  private readonly breaks: ChainBreak[] = [];
  private records = 0;
  private ended: string | null = null;

  /** Bytes of every line but the last, in order. */
  take(bytes: Uint8Array): void {
    this.hash.update(bytes);
  }

  /** Counts a record, in the order of device and sequence. False when it does not follow from the one before. */
  count(record: LogRecord): boolean {
    const { device, sequence } = record;
    const breaksBefore = this.breaks.length;
    this.chain.take(record);
    this.breaks.push(...this.chain.breaks.splice(0));
    this.records += 1;
    const last = this.devices.at(-1);
    if (last?.device === device) {
      last.records += 1;
      last.last = sequence;
    } else {
      this.devices.push({ device, records: 1, first: sequence, last: sequence });
      // The check takes the first record it sees on trust; a backup is a whole log.
      if (sequence > 1) this.breaks.push({ device, sequence: 1, why: 'missing' });
    }
    return this.breaks.length === breaksBefore;
  }

  /** The last line, without its line feed. Nothing can be taken after it. */
  endLine(): string {
    const { records, devices, breakCount, breaks, sha256 } = this.figures();
    const content = { end: 'pacewright-backup', records, devices, breakCount, breaks, sha256 };
    return JSON.stringify(content);
  }

  summary(about: BackupAbout): BackupSummary {
    return { ...about, ...this.figures() };
  }

  private figures(): Omit<BackupSummary, keyof BackupAbout> {
    this.ended ??= bytesToHex(this.hash.digest());
    const devices: DeviceCount[] = this.devices;
    const { breaks } = this;
    return {
      records: this.records,
      devices,
      breakCount: breaks.length,
      breaks: breaks.slice(0, MOST_BREAKS),
      sha256: this.ended,
    };
  }
}
