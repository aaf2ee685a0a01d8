import type { ChainBreak } from '../../domain/records/chain-check';
import type { LogRecord } from '../../domain/records/log-record';
import type { Stamp } from '../../domain/records/stamp';
import type { BackupFault } from './backup-fault';

/** Something to read a backup from, as often as needed: a file, a blob, a snapshot. */
export interface BackupSource {
  stream(): ReadableStream<Uint8Array<ArrayBuffer>>;
}

/** What a backup says about itself before its records. */
export interface BackupAbout {
  /** Release of the app that wrote it. */
  readonly release: string;
  /** The tablet that wrote it; its records may be of several. */
  readonly device: string;
  readonly madeAt: Stamp;
}

/** What a backup holds. */
export interface BackupSummary extends BackupAbout {
  readonly records: number;
  readonly devices: readonly DeviceCount[];
  /** Breaks the log had when the backup was written: the file is whole, the log was not. */
  readonly breakCount: number;
  /** The first of them. */
  readonly breaks: readonly ChainBreak[];
  /** Of all lines but the last, in hexadecimal. */
  readonly sha256: string;
}

export interface DeviceCount {
  readonly device: string;
  readonly records: number;
  readonly first: number;
  readonly last: number;
}

export interface BackupWriting {
  /** The file, piece by piece; to be read once. */
  readonly chunks: AsyncIterable<Uint8Array<ArrayBuffer>>;
  /** Once all pieces are read: how many records are not in it, because no reader would take them. */
  leftOut(): number;
}

export type BackupReading =
  | { readonly ok: true; readonly summary: BackupSummary }
  | { readonly ok: false; readonly fault: BackupFault };

export interface ReadingOptions {
  readonly passphrase?: string | undefined;
  /**
   * Given the records as they come, in the order of device and sequence, each of them checked. Whether the
   * whole file is sound is known only when the reading ends.
   */
  readonly take?: (records: readonly LogRecord[]) => void | Promise<void>;
}

/**
 * A backup file: all records of a log.
 *
 * Must need no more memory for a million records than for a thousand.
 * Must refuse a file that was cut, changed or put together from others, and say what is wrong with it.
 */
export interface BackupFormat {
  /** How the name of such a file ends. */
  ending(isLocked: boolean): string;
  /** Whether a copy can hold this record. One that it cannot is left out: it must not cost the others their copy. */
  takes(record: LogRecord): boolean;
  /**
   * @param records by device and sequence, as a log reads them
   * @throws {RangeError} writeBackup requires a browser with cryptography for a pass-phrase
   */
  write(
    records: AsyncIterable<readonly LogRecord[]>,
    about: BackupAbout,
    passphrase?: string | undefined,
  ): BackupWriting;
  /** Only an error of `take` is thrown; everything about the file is in the answer. */
  read(source: BackupSource, options?: ReadingOptions): Promise<BackupReading>;
}
