import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** Work stands still from this moment. The reason may come later, or never. */
export function stopWork(bench: Bench, at: Stamp): void {
  const turn = bench.turn.value;
  if (turn?.status === 'running') bench.record(turn.id, [{ kind: 'stopped' }], at);
}
