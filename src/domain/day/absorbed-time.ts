import type { LogRecord } from '../records/log-record';

/** How much of each stoppage cost no output, by the key of its stopped record; what was said last holds. */
export function absorbedTime(records: readonly LogRecord[]): ReadonlyMap<string, number> {
  const absorbed = new Map<string, number>();
  for (const { fact } of records) {
    if (fact.kind === 'stoppage-absorbed') absorbed.set(fact.stoppage, fact.absorbedMs);
  }
  return absorbed;
}
