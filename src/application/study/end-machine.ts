import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** The machine's break point, in a study that times the operator and the machine at once. */
export function endMachine(bench: Bench, at: Stamp): void {
  const study = bench.study.value;
  if (study?.status === 'open' && study.heading?.lanes === 2 && study.watch.machine)
    bench.record(study.id, [{ kind: 'machine-ended' }], at);
}
