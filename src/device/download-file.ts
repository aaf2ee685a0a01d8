import type { FileSaver } from '../application/ports/file-saver';

/** Saves a file as a download. */
export const downloadFile: FileSaver = {
  async save({ name, type, text }) {
    const address = URL.createObjectURL(new Blob([text], { type }));
    const link = document.createElement('a');
    link.href = address;
    link.download = name;
    link.click();
    // Some browsers read the address only after the click has been handled.
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  },
};
