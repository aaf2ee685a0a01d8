import type { Bench } from '../bench';

/** The element in hand will be left out for this cause, which a person saw; said again, it will not. */
export function markInHand(bench: Bench, cause: string): void {
  const study = bench.study.value;
  if (study?.status !== 'open' || study.watch.aside) return;
  const isMarked = study.watch.cause === cause;
  bench.record(study.id, [{ kind: 'in-hand-marked', cause: isMarked ? null : cause }]);
}
