import type { Bench } from '../bench';
import { noteCopy } from './note-copy';
import type { PreparedBackup } from './prepare-backup';

/** Opens the share sheet with the file, from a tap. Only a file that was taken counts as a copy. */
export async function shareBackup(
  bench: Bench,
  copy: PreparedBackup,
): Promise<'shared' | 'cancelled' | 'refused'> {
  const outcome = await copy.file.share();
  if (outcome === 'shared') noteCopy(bench, 'shared', copy);
  return outcome;
}
