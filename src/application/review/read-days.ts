import { type DayReview, reviewDay, turnsByDay } from '../../domain/day/review-day';
import { recordKey } from '../../domain/records/record-key';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Bench } from '../bench';
import type { WallRange } from '../ports/record-log';

/** The days with turns in a span of wall time, newest first. */
export async function readDays(bench: Bench, range?: WallRange): Promise<DayReview[]> {
  const starts = await bench.log.readStarts('turn', range);
  const turns = await Promise.all(
    starts.map(async (start) => foldTurn(await bench.log.readStream(recordKey(start)))),
  );
  return [...turnsByDay(turns)].map(([day, own]) => reviewDay(day, own));
}
