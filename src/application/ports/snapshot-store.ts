import type { BackupSource } from './backup-format';

/** A copy of all records that the tablet keeps beside its log. Clearing the browser's data clears it too. */
export interface Snapshot {
  /** 1, 2, 3 …; a later one is newer, whatever the clock said. */
  readonly generation: number;
  /** Calendar day, `2026-03-02`. */
  readonly day: string;
  readonly records: number;
}

/** Where snapshots lie. */
export interface SnapshotStore {
  /** Oldest first. */
  list(): Promise<Snapshot[]>;
  /** The whole snapshot, or an error and nothing. Replaces none. */
  write(snapshot: Snapshot, chunks: AsyncIterable<Uint8Array<ArrayBuffer>>): Promise<void>;
  read(snapshot: Snapshot): Promise<BackupSource>;
  remove(snapshot: Snapshot): Promise<void>;
}
