import { chainOf } from '../../src/domain/records/chain';
import type { Fact, LogRecord } from '../../src/domain/records/log-record';
import type { Stamp } from '../../src/domain/records/stamp';

/** Monday 2 March 2026, 07:00 in a zone one hour east of UTC. */
export const MORNING_MS = Date.UTC(2026, 2, 2, 6, 0, 0);

/** A moment so many milliseconds into the morning, on both clocks. */
export function stampAt(ms: number, change: Partial<Stamp> = {}): Stamp {
  return {
    run: 'run-1',
    monoMs: 1_000 + ms,
    wallMs: MORNING_MS + ms,
    zone: 'Europe/Berlin',
    offsetMin: 60,
    ...change,
  };
}

/** A record of device `t`, at so many milliseconds into the morning. */
export function recordAt<F extends Fact>(
  sequence: number,
  ms: number,
  stream: string,
  fact: F,
  change: Partial<LogRecord> = {},
): LogRecord {
  return { device: 't', sequence, stream, stamp: stampAt(ms), fact, chain: 0, ...change };
}

/** The same records with the checksums that the app gives them, each device's going on from its record before. */
export function chained(records: readonly LogRecord[], before = 0): LogRecord[] {
  const ends = new Map<string, number>();
  return records.map((record) => {
    const chain = chainOf(record, ends.get(record.device) ?? before);
    ends.set(record.device, chain);
    return { ...record, chain };
  });
}
