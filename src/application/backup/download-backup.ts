import type { Bench } from '../bench';
import { noteCopy } from './note-copy';
import type { PreparedBackup } from './prepare-backup';

/** Offers the file as a download. Whether the person kept it, the browser does not tell. */
export function downloadBackup(bench: Bench, copy: PreparedBackup): void {
  copy.file.download();
  noteCopy(bench, 'downloaded', copy);
}
