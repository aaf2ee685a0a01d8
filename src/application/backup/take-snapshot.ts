import { localDay } from '../../domain/day/local-day';
import type { Bench } from '../bench';
import type { Snapshot } from '../ports/snapshot-store';
import type { BackupTools } from './backup-tools';
import type { CopyRefusal } from './copy-made';
import { hasCollapsed } from './has-collapsed';
import { problemOf } from './problem-of';

/** A week and the day that is being written. */
export const GENERATIONS = 8;

export type SnapshotOutcome =
  | { readonly ok: true; readonly snapshot: Snapshot }
  | CopyRefusal
  /** There is one of today, or nothing to copy, or something is being timed. */
  | { readonly ok: false; readonly reason: 'not-due' | 'busy' | 'not-possible' }
  /** Far fewer records can be copied than a snapshot holds: a loss, and the snapshots are what is left of it. */
  | {
      readonly ok: false;
      readonly reason: 'count-collapsed';
      readonly records: number;
      readonly before: Snapshot;
    };

/**
 * Copies the log, once a day and again when it holds twice as much, into the browser's private files: from the log itself, never from what the page
 * has in memory. The oldest copy is given up only after the new one was read back and found whole, and none
 * is given up while far fewer records can be copied than one of them holds.
 *
 * It helps against a damaged or wiped log. It does not survive the clearing of the browser's data.
 */
export async function takeSnapshot(
  bench: Bench,
  { format, snapshots, release }: BackupTools,
): Promise<SnapshotOutcome> {
  if (!snapshots) return { ok: false, reason: 'not-possible' };
  if (bench.busy) return { ok: false, reason: 'busy' };
  try {
    const madeAt = bench.clock.now();
    const { device } = bench.log;
    const kept = await snapshots.list();
    const largest = kept.reduce<Snapshot | null>(
      (most, each) => (most && most.records >= each.records ? most : each),
      null,
    );
    const day = localDay(madeAt);
    const newest = kept.at(-1);
    // The first copy of a new tablet is taken before there is anything worth one.
    const today = newest?.day === day ? newest : null;
    // Again where some can be in no copy: judged and named by how many it does hold.
    for (let records = await bench.log.count(); ; ) {
      if (largest && hasCollapsed(records, largest.records)) {
        return { ok: false, reason: 'count-collapsed', records, before: largest };
      }
      if (records === 0 || (today && records < 2 * today.records)) return { ok: false, reason: 'not-due' };

      const snapshot = { generation: (newest?.generation ?? 0) + 1, day, records };
      const { chunks, leftOut } = format.write(bench.log.readAll(), { release, device, madeAt });
      await snapshots.write(snapshot, chunks);
      const reading = await format.read(await snapshots.read(snapshot));
      const held = reading.ok ? reading.summary.records : 0;
      if (reading.ok && held >= records) {
        const given = today ? [today] : kept.slice(0, Math.max(0, kept.length + 1 - GENERATIONS));
        for (const old of given) await snapshots.remove(old);
        return { ok: true, snapshot };
      }
      await snapshots.remove(snapshot);
      if (!reading.ok) return { ok: false, reason: 'not-verified', fault: reading.fault };
      if (held + leftOut() < records) {
        return { ok: false, reason: 'not-verified', fault: { code: 'contents-changed' } };
      }
      records = held;
    }
  } catch (error) {
    return { ok: false, reason: 'not-written', problem: problemOf(error) };
  }
}
