import type { PlacedRecord } from './place-on-timeline';
import { recordKey } from './record-key';

/**
 * Leaves out what an `undone` record took back, and the `undone` records themselves. The records stay
 * in the log; only what is computed from it changes.
 */
export function withoutUndone(placed: readonly PlacedRecord[]): PlacedRecord[] {
  const undone = new Set<string>();
  for (const { record } of placed) if (record.fact.kind === 'undone') undone.add(record.fact.of);
  // Mostly nothing was taken back, and naming every record costs more than reading it.
  if (undone.size === 0) return [...placed];
  return placed.filter(({ record }) => record.fact.kind !== 'undone' && !undone.has(recordKey(record)));
}
