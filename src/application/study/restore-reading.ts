import type { Bench } from '../bench';

/** Takes a reading that was left out back into the mean. */
export function restoreReading(bench: Bench, study: string, reading: string): void {
  bench.record(study, [{ kind: 'reading-restored', reading }]);
}
