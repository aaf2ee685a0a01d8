import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** Snapback: the watch stands, and what is in hand begins anew when it goes on. What passes meanwhile is in no reading. */
export function holdWatch(bench: Bench, at: Stamp): void {
  const study = bench.study.value;
  if (study?.status !== 'open' || study.heading?.timing !== 'snapback') return;
  if (!study.watch.isHeld && !study.watch.aside) bench.record(study.id, [{ kind: 'watch-held' }], at);
}
