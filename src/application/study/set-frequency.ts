import type { LogRecord } from '../../domain/records/log-record';
import type { FrequencySource } from '../../domain/study/seen-frequency';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/**
 * Says how often an occasional element comes, and how that is known.
 *
 * @throws {RangeError} setFrequency requires an occasional element of the study
 * @throws {RangeError} setFrequency requires work units per occurrence, 1 or more
 */
export function setFrequency(
  bench: Bench,
  study: Study,
  elementNo: number,
  { unitsPerOccurrence, source }: { unitsPerOccurrence: number; source: FrequencySource },
): LogRecord[] {
  const isOccasional = study.readings.some(
    ({ row }) => row.elementNo === elementNo && row.elementClass === 'occasional',
  );
  if (!isOccasional) throw new RangeError('setFrequency requires an occasional element of the study');
  if (!(unitsPerOccurrence >= 1 && Number.isFinite(unitsPerOccurrence))) {
    throw new RangeError('setFrequency requires work units per occurrence, 1 or more');
  }
  return bench.record(study.id, [{ kind: 'frequency-set', elementNo, unitsPerOccurrence, source }]);
}
