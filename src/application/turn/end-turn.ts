import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** The operator leaves the station. Time since the last part is unaccounted, not a cycle. */
export function endTurn(bench: Bench, at: Stamp): void {
  const turn = bench.turn.value;
  if (turn && turn.status !== 'ended') bench.record(turn.id, [{ kind: 'turn-ended' }], at);
}
