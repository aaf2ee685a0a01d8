import type { CopyText } from '../application/ports/copy-text';

export const copyText: CopyText = async (text) => {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
};
