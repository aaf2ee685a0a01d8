import type { BackupTools } from './backup-tools';

type Tools = Pick<BackupTools, 'lastSeen'>;

/**
 * How many records the log has lost since it was last looked at, and that nobody has settled. A log only grows, so
 * that a single one less is a loss. What is recorded after a loss makes nothing good.
 *
 * @param records how many it holds now
 */
export function countMissing(records: number, { lastSeen }: Tools): number {
  const before = lastSeen.read();
  const missing = (before?.missing ?? 0) + Math.max(0, (before?.records ?? 0) - records);
  lastSeen.set({ records, missing });
  return missing;
}

/** The loss was made good from a copy, as far as one goes, or somebody said that it may be so. */
export function settleMissing({ lastSeen }: Tools): void {
  lastSeen.set({ records: lastSeen.read()?.records ?? 0, missing: 0 });
}
