import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** Something that is not of the job begins inside the element in hand, and is timed apart. */
export function beginForeign(bench: Bench, at: Stamp): void {
  const study = bench.study.value;
  if (study?.status === 'open' && !study.watch.aside && !study.watch.isHeld)
    bench.record(study.id, [{ kind: 'foreign-began' }], at);
}
