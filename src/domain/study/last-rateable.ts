import type { Reading } from './study';

/** The last reading whose pace a person set: what a rating judged late is about. */
export function lastRateable(readings: readonly Reading[]): Reading | null {
  const isRateable = ({ row, isMerged }: Reading) =>
    row.work !== 'machine' && row.elementClass !== 'foreign' && row.observedMs !== null && !isMerged;
  return readings.findLast(isRateable) ?? null;
}
