import type { Bench } from '../bench';

/** Corrects a rating. The first one stays in the log. */
export function rateReading(bench: Bench, study: string, reading: string, ratingPct: number): void {
  bench.record(study, [{ kind: 'reading-rated', reading, ratingPct }]);
}
