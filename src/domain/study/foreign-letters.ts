import type { Reading } from './study';

/** A foreign element as the observation sheet shows it: a letter in the cell it fell into. */
export interface ForeignLetter {
  /** A, B, C … in order of time; AA after Z. */
  readonly letter: string;
  readonly reading: Reading;
  /** The reading it was timed apart from; null when it was the last thing seen, or a table does not say. */
  readonly inside: string | null;
}

/**
 * Gives the foreign elements of a study their letters.
 *
 * A foreign element is recorded when it ends, so the element it fell into is the next of the method in
 * the order of the readings, of the same cycle. In two lanes it is the operator's: the machine ran on beside it.
 */
export function foreignLetters(readings: readonly Reading[], lanes: 1 | 2 = 1): ForeignLetter[] {
  const holds = (next: Reading, foreign: Reading) =>
    isSeenInCycle(next, foreign) && (lanes === 1 || next.row.work !== 'machine');
  return readings
    .flatMap((reading, place) => (reading.row.elementClass === 'foreign' ? [{ reading, place }] : []))
    .map(({ reading, place }, count) => ({
      letter: letterOf(count),
      reading,
      inside: readings.slice(place + 1).find((next) => holds(next, reading))?.id ?? null,
    }));
}

function isSeenInCycle({ row }: Reading, { row: foreign }: Reading): boolean {
  return row.elementClass === 'repetitive' && row.observedMs !== null && row.cycle === foreign.cycle;
}

function letterOf(count: number): string {
  const last = String.fromCharCode(65 + (count % 26));
  return count < 26 ? last : letterOf(Math.floor(count / 26) - 1) + last;
}
