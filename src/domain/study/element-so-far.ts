import { observedMean } from '../../statistics/observed-mean';
import type { Reading } from './study';

/** What the engineer sees of an element while timing: how many readings, and their mean. */
export interface ElementSoFar {
  readonly n: number;
  /** Mean of the observed times used, milliseconds; null before the first. */
  readonly observedMeanMs: number | null;
}

export function elementSoFar(readings: readonly Reading[], elementNo: number): ElementSoFar {
  const observed = readings.flatMap(({ row }) =>
    row.elementNo === elementNo && row.excluded === null && row.observedMs !== null ? [row.observedMs] : [],
  );
  return { n: observed.length, observedMeanMs: observed.length > 0 ? observedMean(observed) : null };
}
