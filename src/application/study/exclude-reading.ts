import type { LogRecord } from '../../domain/records/log-record';
import { readingOf } from '../../domain/study/reading-of';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Leaves a reading out of every mean, for a cause a person names. The reading stays on the sheet.
 *
 * @throws {RangeError} excludeReading requires a reading of the study
 * @throws {RangeError} excludeReading requires a cause
 */
export function excludeReading(bench: Bench, study: Study, reading: string, cause: string): LogRecord[] {
  readingOf('excludeReading', study, reading);
  if (cause.trim() === '') throw new RangeError('excludeReading requires a cause');
  return bench.record(study.id, [{ kind: 'reading-excluded', reading, cause: cause.trim() }]);
}
