import { foldAnyTurn } from '../../domain/turn/fold-any-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import type { DaySpan } from './read-summaries';
import { readTurnStarts } from './read-turn-starts';

const DAY_MS = 86_400_000;

/** The turns that began on the days from and to, oldest first. */
export async function readTurnsBetween(bench: Bench, { from, to }: DaySpan): Promise<Turn[]> {
  const starts = await readTurnStarts(bench, {
    fromWallMs: Date.parse(from) - DAY_MS,
    toWallMs: Date.parse(to) + 2 * DAY_MS,
  });
  const turns: Turn[] = [];
  for (const { id, stamp } of starts) {
    const day = dayOf(bench, stamp);
    if (day < from || day > to) continue;
    const inHand = bench.turn.peek();
    const turn = inHand?.id === id ? inHand : foldAnyTurn(await bench.log.readStream(id));
    if (!turn.isWithdrawn) turns.push(turn);
  }
  return turns;
}
