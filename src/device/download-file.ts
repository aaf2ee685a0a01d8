import type { FileSaver } from '../application/ports/file-saver';

/** Saves a file as a download. */
export const downloadFile: FileSaver = {
  async save(file) {
    const content = 'text' in file ? file.text : file.bytes;
    const address = URL.createObjectURL(new Blob([content], { type: file.type }));
    const link = document.createElement('a');
    link.href = address;
    link.download = file.name;
    link.click();
    // Some browsers read the address only after the click has been handled.
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  },
};
