import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** The watch stops. An element that was not finished is no reading. */
export function endStudy(bench: Bench, at: Stamp): void {
  const study = bench.study.value;
  if (study?.status === 'open') bench.record(study.id, [{ kind: 'study-ended' }], at);
}
