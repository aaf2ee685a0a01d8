import type { Bench } from '../bench';

/** Takes the last tap of the turn back. The tap stays in the log, and so does its being taken back. */
export function undoLastTap(bench: Bench): void {
  const turn = bench.turn.value;
  if (turn?.undoable) bench.record(turn.id, [{ kind: 'undone', of: turn.undoable.key }]);
}
