import type { Bench } from '../bench';

/** The break point of the element in hand was not seen: it merges with the next one, both left out. */
export function missBreakPoint(bench: Bench): void {
  const study = bench.study.value;
  if (study?.status === 'open' && !study.watch.aside && !study.watch.isHeld)
    bench.record(study.id, [{ kind: 'break-point-missed', waits: true }]);
}
