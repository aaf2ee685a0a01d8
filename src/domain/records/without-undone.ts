import type { PlacedRecord } from './place-on-timeline';
import { recordKey } from './record-key';

/**
 * Leaves out what an `undone` record took back, with what was said of a stoppage that was, and the `undone` records
 * themselves. The records stay in the log; only what is computed from it changes.
 */
export function withoutUndone(placed: readonly PlacedRecord[]): PlacedRecord[] {
  const undone = new Set<string>();
  // Few were taken back, and naming every record costs more than reading it: only those of the same number are named.
  const numbers = new Set<number>();
  for (const { fact } of placed.map(({ record }) => record)) {
    if (fact.kind !== 'undone') continue;
    undone.add(fact.of);
    numbers.add(Number(fact.of.slice(fact.of.lastIndexOf(':') + 1)));
  }
  return placed.filter(({ record }) => {
    const { fact } = record;
    if (fact.kind === 'undone' || ('stoppage' in fact && undone.has(fact.stoppage!))) return false;
    return !(numbers.has(record.sequence) && undone.has(recordKey(record)));
  });
}
