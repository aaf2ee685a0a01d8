import type { LogRecord } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** The records of a study, in order, to be folded and added to while it is read; none for an unknown name. */
export function readStudyRecords(bench: Bench, id: string): Promise<LogRecord[]> {
  return bench.log.readStream(id);
}
