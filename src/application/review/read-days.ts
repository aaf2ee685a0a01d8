import { type DayReview, reviewDay, turnsByDay } from '../../domain/day/review-day';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';
import type { WallRange } from '../ports/record-log';
import { readTurnStarts, type TurnStart } from './read-turn-starts';

const ALWAYS: WallRange = { fromWallMs: 0, toWallMs: Number.MAX_SAFE_INTEGER };

/** The days with turns in a span of wall time, newest first. */
export async function readDays(bench: Bench, range: WallRange = ALWAYS): Promise<DayReview[]> {
  return reviewTurns(bench, await readTurnStarts(bench, range));
}

/** The days of some turns, newest first. */
export async function reviewTurns(bench: Bench, starts: readonly TurnStart[]): Promise<DayReview[]> {
  const turns = await Promise.all(starts.map(({ id }) => readTurn(bench, id)));
  return [...turnsByDay(turns)].map(([day, own]) => reviewDay(day, own));
}

/** The turn in hand is taken from the bench, which knows its last tap before the log does. */
async function readTurn(bench: Bench, id: string): Promise<Turn> {
  const inHand = bench.turn.peek();
  return inHand?.id === id ? inHand : foldTurn(await bench.log.readStream(id));
}
