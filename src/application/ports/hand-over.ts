import type { BackupSource } from './backup-format';

/** Hands a large file to the person, in two steps: a share sheet opens only right after a tap. */
export interface HandOver {
  /** Takes the file in; nothing is shown yet. */
  gather(fileName: string, chunks: AsyncIterable<Uint8Array<ArrayBuffer>>): Promise<ReadyFile>;
}

/** A file that waits for the person to say where it goes. */
export interface ReadyFile {
  readonly name: string;
  readonly bytes: number;
  readonly source: BackupSource;
  readonly canShare: boolean;
  /** Opens the share sheet, from a tap. 'refused': the system would not take it; a download may. */
  share(): Promise<'shared' | 'cancelled' | 'refused'>;
  /** Nothing tells whether the person then kept it. */
  download(): void;
}
