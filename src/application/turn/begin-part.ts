import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** Hands are on the next part from this moment, where start and end are tapped. */
export function beginPart(bench: Bench, at: Stamp): void {
  const turn = bench.turn.value;
  if (turn && turn.status !== 'ended') bench.record(turn.id, [{ kind: 'part-begun' }], at);
}
