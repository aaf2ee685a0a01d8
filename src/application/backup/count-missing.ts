import { ALL_TABLETS, type Seen } from '../ports/last-seen';
import type { BackupTools } from './backup-tools';

type Tools = Pick<BackupTools, 'lastSeen'>;
type ByDevice = ReadonlyMap<string, number>;

const sum = (counts: Iterable<number>) => [...counts].reduce((all, each) => all + each, 0);

/**
 * How many records the log has lost since it was last looked at, and that nobody has settled. A log only grows, so
 * that a single one less of a tablet is a loss. What is recorded after a loss makes nothing good.
 *
 * @param counts how many of each tablet it holds now
 */
export function countMissing(counts: ByDevice, { lastSeen }: Tools): number {
  const before = lastSeen.read() ?? new Map<string, Seen>();
  const seen = new Map<string, Seen>();
  for (const device of new Set([...before.keys(), ...counts.keys()])) {
    const was = before.get(device) ?? { records: 0, missing: 0 };
    const records = counts.get(device) ?? 0;
    const now = device === ALL_TABLETS ? sum(counts.values()) : records;
    const missing = was.missing + Math.max(0, was.records - now);
    if (records + missing > 0) seen.set(device, { records, missing });
  }
  lastSeen.set(seen);
  return sum([...seen.values()].map(({ missing }) => missing));
}

/** What came in of a tablet is missing no more; what came in of one that had lost nothing makes nothing good. */
export function settleRestored(cameIn: ByDevice, tools: Tools): void {
  settle(tools, ({ missing }, device) => {
    const back = device === ALL_TABLETS ? sum(cameIn.values()) : (cameIn.get(device) ?? 0);
    return Math.max(0, missing - back);
  });
}

/** Somebody said that the loss may be so. */
export function settleMissing(tools: Tools): void {
  settle(tools, () => 0);
}

function settle({ lastSeen }: Tools, left: (seen: Seen, device: string) => number): void {
  const seen = [...(lastSeen.read() ?? [])];
  lastSeen.set(
    new Map(seen.map(([device, each]) => [device, { ...each, missing: left(each, device) }] as const)),
  );
}
