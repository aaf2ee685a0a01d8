import type { OutsideFolder } from '../application/ports/outside-folder';
import { folderShelf } from './folder-shelf';

/** What Chromium has beyond the standard, and the compiler's library therefore lacks. */
interface AskableFolder extends FileSystemDirectoryHandle {
  queryPermission(wanted: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission(wanted: { mode: 'readwrite' }): Promise<PermissionState>;
}
interface FolderPicker {
  showDirectoryPicker(options: { id: string; mode: 'readwrite' }): Promise<FileSystemDirectoryHandle>;
}

const WRITE = { mode: 'readwrite' } as const;

/**
 * A folder of the tablet that a person chose; null where the browser has no picker for one (Safari, Firefox).
 *
 * A browser may forget its permission when the page closes. It is asked again from a tap only.
 */
export function webFolder(): OutsideFolder | null {
  if (!('showDirectoryPicker' in globalThis)) return null;
  const picker = globalThis as unknown as FolderPicker;
  const folder = async () => (await folderShelf.read()) as AskableFolder | undefined;
  const inUse = async () => {
    const handle = await folder();
    if (!handle) throw new Error('no folder is chosen');
    return handle;
  };
  return {
    async chosen() {
      const handle = await folder();
      if (!handle) return null;
      return { name: handle.name, mayWrite: (await handle.queryPermission(WRITE)) === 'granted' };
    },
    async choose() {
      try {
        await folderShelf.keep(await picker.showDirectoryPicker({ id: 'pacewright', ...WRITE }));
        return true;
      } catch (error) {
        if (error instanceof DOMException && error.name === 'AbortError') return false;
        throw error;
      }
    },
    async askAgain() {
      return (await (await inUse()).requestPermission(WRITE)) === 'granted';
    },
    async forget() {
      await folderShelf.forget();
    },
    async read(fileName) {
      try {
        return await (await (await inUse()).getFileHandle(fileName)).getFile();
      } catch (error) {
        if (error instanceof DOMException && error.name === 'NotFoundError') return null;
        throw error;
      }
    },
    async write(fileName, chunks) {
      const file = await (await inUse()).getFileHandle(fileName, { create: true });
      // Written beside the file and put in its place by `close`, so a copy that is cut short replaces nothing.
      const writing = await file.createWritable();
      try {
        for await (const chunk of chunks) await writing.write(chunk);
        await writing.close();
      } catch (error) {
        await writing.abort().catch(() => {});
        throw error;
      }
    },
  };
}
