import type { Bench } from '../bench';
import { dayOf } from './day-of';

/** The newest day that has a turn, saved or not; null when none has begun. */
export async function readNewestDay(bench: Bench): Promise<string | null> {
  const [newest] = await bench.log.readLatestStarts('turn', 1);
  const stamps = [newest?.stamp, bench.turn.peek()?.startedAt].flatMap((stamp) => stamp ?? []);
  return (
    stamps
      .map((stamp) => dayOf(bench, stamp))
      .sort()
      .at(-1) ?? null
  );
}
