import type { LogRecord } from '../../domain/records/log-record';
import { readingOf } from '../../domain/study/reading-of';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Takes a reading that was left out back into the mean.
 *
 * @throws {RangeError} restoreReading requires a reading of the study
 * @throws {RangeError} restoreReading requires the time of one element, not a missed break point
 */
export function restoreReading(bench: Bench, study: Study, reading: string): LogRecord[] {
  if (readingOf('restoreReading', study, reading).isMerged) {
    throw new RangeError('restoreReading requires the time of one element, not a missed break point');
  }
  return bench.record(study.id, [{ kind: 'reading-restored', reading }]);
}
