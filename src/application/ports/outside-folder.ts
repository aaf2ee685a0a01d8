import type { BackupSource } from './backup-format';

/** A folder outside the browser that a person chose for copies. It outlives the browser's data. */
export interface OutsideFolder {
  /** The folder in use; null when none is chosen. `mayWrite` is false when the browser has to ask again. */
  chosen(): Promise<{ readonly name: string; readonly mayWrite: boolean } | null>;
  /** Lets the person choose, from a tap; false when they did not. */
  choose(): Promise<boolean>;
  /** Asks for permission again, from a tap; true when it was given. */
  askAgain(): Promise<boolean>;
  /** The folder is not used any more; what lies in it stays. */
  forget(): Promise<void>;
  /** Null when there is no such file. */
  read(fileName: string): Promise<BackupSource | null>;
  /** The whole file, or an error and the file that was there before. */
  write(fileName: string, chunks: AsyncIterable<Uint8Array<ArrayBuffer>>): Promise<void>;
}
