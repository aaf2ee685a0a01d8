import type { Bench } from '../bench';

/** Takes the last tap of the open study back: the element goes on as if it had not ended. */
export function undoLastReading(bench: Bench): void {
  const study = bench.study.value;
  if (study?.status === 'open' && study.undoable) {
    bench.record(study.id, [{ kind: 'undone', of: study.undoable.key }]);
  }
}
