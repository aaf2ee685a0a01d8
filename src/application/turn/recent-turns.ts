import { recordKey } from '../../domain/records/record-key';
import { foldAnyTurn } from '../../domain/turn/fold-any-turn';
import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/** A week of two turns a day. */
const RECENT = 10;

/** The newest turns of the shop that are over and were tapped, oldest first. */
export async function recentTurns(bench: Bench): Promise<Turn[]> {
  const starts = await bench.log.readLatestStarts('turn', RECENT + 1);
  const turns: Turn[] = [];
  for (const start of starts.reverse()) {
    const turn = foldAnyTurn(await bench.log.readStream(recordKey(start)));
    if (turn.status === 'ended' && !turn.enteredLater) turns.push(turn);
  }
  return turns.slice(-RECENT);
}
