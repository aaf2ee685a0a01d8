import type { LogRecord } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** NEVER RENAME: files written under this name must be read for ever. */
export const RECORDS_FORMAT = 'pacewright-records';
/** Rises when the form of the file changes; the form of a record is its own affair. */
export const RECORDS_FORMAT_VERSION = 1;

const NOTE =
  'Everything one tablet has recorded. For improvement and planning of the work; not for pay or discipline, and no record of hours worked.';

/** A file of everything, and how many records it holds. */
export interface RecordsFile {
  readonly text: string;
  readonly records: number;
  /** Recorded but not in the log yet, and so not in the file. */
  readonly leftOut: number;
}

/**
 * Writes every record of the log as one JSON text, a record a line, with its counts at the head so that a file
 * that was cut short shows it.
 */
export async function writeRecordsFile(bench: Bench): Promise<RecordsFile> {
  const records: LogRecord[] = [];
  for await (const batch of bench.log.readAll()) records.push(...batch);
  const began = (what: 'turn' | 'study') =>
    records.filter(({ fact }) => 'starts' in fact && fact.starts === what).length;
  const leftOut = bench.saving.peek().unsaved;
  const { wallMs, zone } = bench.clock.now();
  const head = {
    format: RECORDS_FORMAT,
    version: RECORDS_FORMAT_VERSION,
    note: NOTE,
    device: bench.log.device,
    savedAt: new Date(wallMs).toISOString(),
    timeZone: zone,
    counts: { records: records.length, turns: began('turn'), studies: began('study'), leftOut },
  };
  const lines = records.map((record) => JSON.stringify(record));
  const opening = JSON.stringify(head, null, 1).slice(0, -2);
  return {
    text: `${opening},\n "records": [\n${lines.join(',\n')}\n ]\n}\n`,
    records: records.length,
    leftOut,
  };
}
