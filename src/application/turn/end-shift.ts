import { localDay } from '../../domain/day/local-day';
import { elapsedMs } from '../../domain/records/elapsed-ms';
import { wallTime } from '../../domain/shop/wall-time';
import type { Bench } from '../bench';

const DAY_MIN = 1_440;

/**
 * The shift of the turn in hand ends when the clock next shows this minute of the day: said at the station, in the
 * place of what the calendar has. Breaks stay as they were planned.
 *
 * @param minute since midnight, 0 to 1,439
 * @throws {RangeError} endShift requires a whole minute of a day
 */
export function endShift(bench: Bench, minute: number): void {
  if (!(Number.isInteger(minute) && minute >= 0 && minute < DAY_MIN)) {
    throw new RangeError('endShift requires a whole minute of a day');
  }
  const turn = bench.turn.peek();
  if (!turn || turn.status === 'ended') return;
  const now = bench.clock.now();
  const onWallMs = now.wallMs - turn.lastAtMs - elapsedMs(turn.lastStamp, now);
  const today = wallTime(localDay(now), minute, now.zone);
  const endsWallMs = today > now.wallMs ? today : wallTime(localDay(now), minute + DAY_MIN, now.zone);
  const breaks = turn.planned.breaks.map(({ fromMs, toMs, ...counted }) => ({
    ...counted,
    fromWallMs: fromMs + onWallMs,
    toWallMs: toMs + onWallMs,
  }));
  bench.record(turn.id, [{ kind: 'shift-planned', breaks, endsWallMs }]);
}
