import type { Snapshot, SnapshotStore } from '../application/ports/snapshot-store';

// DO NOT RENAME. What is left of a shop may lie under it.
const FOLDER = 'pacewright-snapshots';

/**
 * Snapshots as packed files in the origin's private file system: not in a database, because the engine that
 * may lose the log's would lose theirs with it. Null where the browser cannot write such files from the page
 * (Safari before 26) or cannot pack.
 *
 * Must make files rarely: the table of their names is such an engine too. One a day, and one removed.
 */
export function opfsSnapshots(folderName = FOLDER): SnapshotStore | null {
  const canWrite =
    'FileSystemFileHandle' in globalThis &&
    'createWritable' in FileSystemFileHandle.prototype &&
    'CompressionStream' in globalThis;
  if (!canWrite) return null;
  const folder = async () =>
    (await navigator.storage.getDirectory()).getDirectoryHandle(folderName, { create: true });

  return {
    async list() {
      const { whole } = await sorted(await folder());
      return whole.sort((a, b) => a.generation - b.generation);
    },
    async write(snapshot, chunks) {
      const within = await folder();
      for (const name of (await sorted(within)).unfinished) await within.removeEntry(name);
      const name = nameOf(snapshot);
      const file = await within.getFileHandle(name, { create: true });
      try {
        const packed = streamOf(chunks).pipeThrough(new CompressionStream('gzip'));
        // Nothing is in the file before the stream closes, and a stream that fails is thrown away.
        await packed.pipeTo(await file.createWritable());
      } catch (error) {
        await within.removeEntry(name).catch(() => {});
        throw error;
      }
    },
    async read(snapshot) {
      const file = await (await (await folder()).getFileHandle(nameOf(snapshot))).getFile();
      return { stream: () => file.stream().pipeThrough(new DecompressionStream('gzip')) };
    },
    async remove(snapshot) {
      await (await folder()).removeEntry(nameOf(snapshot));
    },
  };
}

function nameOf({ generation, day, records }: Snapshot): string {
  return `${String(generation).padStart(6, '0')}_${day}_${records}.gz`;
}

/** Null for a file that is no snapshot, such as one that a browser keeps while it writes. */
function snapshotNamed(name: string): Snapshot | null {
  const [, generation, day, records] = /^(\d+)_(\d{4}-\d\d-\d\d)_(\d+)\.gz$/.exec(name) ?? [];
  if (!generation || !day || !records) return null;
  return { generation: Number(generation), day, records: Number(records) };
}

/** What lies in the folder. A file is empty until it is closed: one that is empty now was never finished. */
async function sorted(folder: FileSystemDirectoryHandle) {
  const whole: Snapshot[] = [];
  const unfinished: string[] = [];
  for await (const name of namesIn(folder)) {
    const snapshot = snapshotNamed(name);
    if (!snapshot) continue;
    const { size } = await (await folder.getFileHandle(name)).getFile();
    if (size > 0) whole.push(snapshot);
    else unfinished.push(name);
  }
  return { whole, unfinished };
}

/** A folder's names; the compiler's library does not know that a folder can be walked. */
function namesIn(folder: FileSystemDirectoryHandle): AsyncIterable<string> {
  return (folder as FileSystemDirectoryHandle & { keys(): AsyncIterable<string> }).keys();
}

function streamOf(chunks: AsyncIterable<Uint8Array<ArrayBuffer>>): ReadableStream<Uint8Array<ArrayBuffer>> {
  const pieces = chunks[Symbol.asyncIterator]();
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await pieces.next();
      if (done) controller.close();
      else controller.enqueue(value);
    },
    async cancel() {
      await pieces.return?.();
    },
  });
}
