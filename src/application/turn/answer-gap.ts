import type { StoppedTime } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/**
 * Says what a gap was: work, or time that was stopped. A second answer replaces the first; both stay in the log.
 *
 * @param stream the turn, in hand or past
 * @param by code of the person who says so; left out at the station
 */
export function answerGap(
  bench: Bench,
  stream: string,
  gap: string,
  as: 'work' | StoppedTime,
  by?: string,
): void {
  bench.record(stream, [{ kind: 'gap-explained', gap, as, ...(by ? { by } : {}) }]);
}
