import type { HandOver, ReadyFile } from '../application/ports/hand-over';

/** Pieces of this size go over to the browser, which may keep them on its disk: the page's memory stays free. */
const PART_BYTES = 4 << 20;
/** What every share sheet takes; the app tells a backup by its content. */
const TYPE = 'text/plain';

/** Files by share sheet where the system has one, by download everywhere. */
export const handOverFile: HandOver = {
  async gather(name, chunks) {
    const parts: Blob[] = [];
    let pending: Uint8Array<ArrayBuffer>[] = [];
    let bytes = 0;
    for await (const chunk of chunks) {
      pending.push(chunk);
      bytes += chunk.length;
      if (bytes < PART_BYTES) continue;
      parts.push(new Blob(pending));
      pending = [];
      bytes = 0;
    }
    return readyFile(new File([...parts, ...pending], name, { type: TYPE }));
  },
};

function readyFile(file: File): ReadyFile {
  return {
    name: file.name,
    bytes: file.size,
    source: file,
    canShare: navigator.canShare?.({ files: [file] }) ?? false,
    async share() {
      try {
        await navigator.share({ files: [file] });
        return 'shared';
      } catch (error) {
        return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'refused';
      }
    },
    download() {
      const address = URL.createObjectURL(file);
      const link = document.createElement('a');
      link.href = address;
      link.download = file.name;
      link.click();
      // Some browsers read the address only after the click has been handled.
      setTimeout(() => URL.revokeObjectURL(address), 60_000);
    },
  };
}
