import type { Bench } from '../bench';

/** A word on what is in hand: it names a foreign element, and stands beside any other as a remark. */
export function noteInHand(bench: Bench, note: string): void {
  const study = bench.study.value;
  if (study?.status === 'open') bench.record(study.id, [{ kind: 'in-hand-noted', note: note.trim() }]);
}
