import type { LogRecord } from '../../domain/records/log-record';
import type { Study } from '../../domain/study/study';
import type { TypedClock } from '../../domain/study/study-clock';
import type { Bench } from '../bench';

/**
 * Writes down the clock check as it was read off the shop's clock; an earlier one stays in the log.
 *
 * @throws {RangeError} checkClock requires an elapsed time above 0 and times of 0 or more
 */
export function checkClock(bench: Bench, study: Study, clock: TypedClock): LogRecord[] {
  const { elapsedMs, beforeMs, afterMs } = clock;
  if (!(elapsedMs > 0 && beforeMs >= 0 && afterMs >= 0 && Number.isFinite(elapsedMs + beforeMs + afterMs))) {
    throw new RangeError('checkClock requires an elapsed time above 0 and times of 0 or more');
  }
  return bench.record(study.id, [{ kind: 'clock-checked', elapsedMs, beforeMs, afterMs }]);
}
