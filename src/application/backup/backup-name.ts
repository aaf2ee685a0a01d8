import { localDay } from '../../domain/day/local-day';
import type { Stamp } from '../../domain/records/stamp';

/** Name of a backup file: one a tablet and day, so that a day's later copy takes the place of its earlier. */
export function backupName(device: string, madeAt: Stamp, ending: string): string {
  return `pacewright-${device.replace(/[^\w-]/g, '_')}-${localDay(madeAt)}${ending}`;
}
