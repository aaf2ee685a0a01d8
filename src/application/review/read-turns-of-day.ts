import { type Correction, correctionHistory } from '../../domain/turn/correction-history';
import { foldAnyTurn } from '../../domain/turn/fold-any-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';
import { dayOf } from './day-of';
import { readTurnStarts } from './read-turn-starts';

const DAY_MS = 86_400_000;

/** A turn with what was put right in it. */
export interface TurnWithCorrections {
  readonly turn: Turn;
  readonly corrections: readonly Correction[];
}

/** The turns that began on a day of the shop, oldest first; none when the text is no day. */
export async function readTurnsOfDay(bench: Bench, day: string): Promise<TurnWithCorrections[]> {
  const middayMs = Date.parse(`${day}T12:00:00Z`);
  if (!/^\d{4}-\d\d-\d\d$/.test(day) || Number.isNaN(middayMs)) return [];
  const range = { fromWallMs: middayMs - 1.5 * DAY_MS, toWallMs: middayMs + 1.5 * DAY_MS };
  const starts = (await readTurnStarts(bench, range)).filter(({ stamp }) => dayOf(bench, stamp) === day);
  return Promise.all(
    starts.map(async ({ id }) => {
      const records = await bench.log.readStream(id);
      const inHand = bench.turn.peek();
      const turn = inHand?.id === id ? inHand : foldAnyTurn(records);
      return { turn, corrections: records.length > 0 ? correctionHistory(records) : [] };
    }),
  );
}
