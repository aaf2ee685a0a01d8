import type { LogRecord } from '../../domain/records/log-record';
import { readingOf } from '../../domain/study/reading-of';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * A word on a reading, said afterwards: it names a foreign element, and stands beside any other as a remark.
 *
 * @throws {RangeError} noteReading requires a reading of the study
 */
export function noteReading(bench: Bench, study: Study, reading: string, note: string): LogRecord[] {
  readingOf('noteReading', study, reading);
  return bench.record(study.id, [{ kind: 'reading-noted', reading, note: note.trim() }]);
}
