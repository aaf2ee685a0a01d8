import type { LogRecord } from '../../domain/records/log-record';
import { readingOf } from '../../domain/study/reading-of';
import { requireRating } from '../../domain/study/require-rating';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Corrects a rating. The first one stays in the log.
 *
 * @throws {RangeError} rateReading requires a reading of the study
 * @throws {RangeError} rateReading requires work that a person governs: a machine is always at 100
 * @throws {RangeError} rateReading requires a rating above 0 and of at most 200
 */
export function rateReading(bench: Bench, study: Study, reading: string, ratingPct: number): LogRecord[] {
  const { row } = readingOf('rateReading', study, reading);
  if (row.work === 'machine' && ratingPct !== 100) {
    throw new RangeError('rateReading requires work that a person governs: a machine is always at 100');
  }
  requireRating('rateReading', ratingPct);
  return bench.record(study.id, [{ kind: 'reading-rated', reading, ratingPct }]);
}
