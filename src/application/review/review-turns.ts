import { type DayReview, reviewDay, turnsByDay } from '../../domain/day/review-day';
import { foldTurn } from '../../domain/turn/fold-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import type { TurnStart } from './read-turn-starts';

/** The days of some turns, newest first. */
export async function reviewTurns(bench: Bench, starts: readonly TurnStart[]): Promise<DayReview[]> {
  const turns = await Promise.all(starts.map(({ id }) => readTurn(bench, id)));
  return [...turnsByDay(turns, (stamp) => dayOf(bench, stamp))].map(([day, own]) => reviewDay(day, own));
}

/** The turn in hand is taken from the bench, which knows its last tap before the log does. */
async function readTurn(bench: Bench, id: string): Promise<Turn> {
  const inHand = bench.turn.peek();
  return inHand?.id === id ? inHand : foldTurn(await bench.log.readStream(id));
}
