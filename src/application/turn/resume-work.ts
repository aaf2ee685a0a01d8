import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** Work goes on from this moment. */
export function resumeWork(bench: Bench, at: Stamp): void {
  const turn = bench.turn.value;
  if (turn?.status === 'stopped') bench.record(turn.id, [{ kind: 'resumed' }], at);
}
