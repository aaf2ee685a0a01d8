import { signal } from '@preact/signals';
import type { RestoreOutcome } from '../../application/backup/restore-backup';

/** What the last restore came to; it outlives the screen, which is built anew on the restored records. */
export const restored = signal<RestoreOutcome | null>(null);
