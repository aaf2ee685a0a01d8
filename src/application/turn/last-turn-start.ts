import type { TurnFact } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/** Who began the newest turn, and with which part; null when there has been none. */
export async function lastTurnStart(
  bench: Bench,
): Promise<Extract<TurnFact, { kind: 'turn-started' }> | null> {
  const [newest] = await bench.log.readLatestStarts('turn', 1);
  return newest?.fact.kind === 'turn-started' ? newest.fact : null;
}
