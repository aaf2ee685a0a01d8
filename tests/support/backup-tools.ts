import type { BackupTools } from '../../src/application/backup/backup-tools';
import type { HandOver, ReadyFile } from '../../src/application/ports/hand-over';
import type { LastSeen, Seen } from '../../src/application/ports/last-seen';
import type { OutsideFolder } from '../../src/application/ports/outside-folder';
import type { Snapshot, SnapshotStore } from '../../src/application/ports/snapshot-store';
import { backupFormat } from '../../src/exchange/backup-format';
import { type Bytes, joined, quickSecrets, sourceOf } from './backup-files';

/** A folder in memory. A test may take its permission away, or let the disk spoil what is written. */
export class FakeFolder implements OutsideFolder {
  readonly files = new Map<string, Bytes>();
  name: string | null = 'Backups';
  mayWrite = true;
  spoil: (bytes: Bytes) => Bytes = (bytes) => bytes;

  async chosen() {
    return this.name === null ? null : { name: this.name, mayWrite: this.mayWrite };
  }
  async choose() {
    this.name = 'Backups';
    return true;
  }
  async askAgain() {
    this.mayWrite = true;
    return true;
  }
  async forget() {
    this.name = null;
  }
  async read(fileName: string) {
    const bytes = this.files.get(fileName);
    return bytes ? sourceOf(bytes) : null;
  }
  async write(fileName: string, chunks: AsyncIterable<Bytes>) {
    this.files.set(fileName, this.spoil(await joined(chunks)));
  }
}

/** Snapshots in memory. */
export class FakeSnapshots implements SnapshotStore {
  readonly kept: { snapshot: Snapshot; bytes: Bytes }[] = [];
  spoil: (bytes: Bytes) => Bytes = (bytes) => bytes;
  /** What was done, in order. */
  readonly done: string[] = [];

  async list() {
    return this.kept.map(({ snapshot }) => snapshot);
  }
  async write(snapshot: Snapshot, chunks: AsyncIterable<Bytes>) {
    this.kept.push({ snapshot, bytes: this.spoil(await joined(chunks)) });
    this.done.push(`wrote ${snapshot.generation}`);
  }
  async read({ generation }: Snapshot) {
    this.done.push(`read ${generation}`);
    return sourceOf(this.kept.find(({ snapshot }) => snapshot.generation === generation)!.bytes);
  }
  async remove({ generation }: Snapshot) {
    this.done.push(`removed ${generation}`);
    const place = this.kept.findIndex(({ snapshot }) => snapshot.generation === generation);
    this.kept.splice(place, 1);
  }
}

/** A share sheet that answers as it is told, and a list of what was downloaded. */
export class FakeHandOver implements HandOver {
  answer: 'shared' | 'cancelled' | 'refused' = 'shared';
  readonly downloads: string[] = [];
  spoil: (bytes: Bytes) => Bytes = (bytes) => bytes;

  async gather(name: string, chunks: AsyncIterable<Bytes>): Promise<ReadyFile> {
    const bytes = this.spoil(await joined(chunks));
    return {
      name,
      bytes: bytes.length,
      source: sourceOf(bytes),
      canShare: true,
      share: async () => this.answer,
      download: () => void this.downloads.push(name),
    };
  }
}

/** What was last seen, in memory. */
export class FakeLastSeen implements LastSeen {
  seen: ReadonlyMap<string, Seen> | null = null;
  read() {
    return this.seen;
  }
  set(seen: ReadonlyMap<string, Seen>) {
    this.seen = seen;
  }
}

export function fakeTools() {
  const lastSeen = new FakeLastSeen();
  const folder = new FakeFolder();
  const snapshots = new FakeSnapshots();
  const handOver = new FakeHandOver();
  const tools: BackupTools = {
    format: backupFormat(quickSecrets()),
    handOver,
    folder,
    snapshots,
    lastSeen,
    release: '0.1.0',
  };
  return { tools, folder, snapshots, handOver, lastSeen };
}

/** A byte in the middle is another. */
export function spoilt(bytes: Bytes): Bytes {
  const other = bytes.slice();
  other[bytes.length >> 1]! ^= 1;
  return other;
}
