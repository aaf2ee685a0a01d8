import type { CellDays } from './cell-days';

/** What a day must give, and what it loses on the way. Times in milliseconds. */
export interface WantedDay {
  readonly dayMs: number;
  readonly partsPerDay: number;
  /** Occasional work and rework, a part. */
  readonly occasionalMs: number;
  readonly reworkMs: number;
  readonly days: Pick<CellDays, 'stops' | 'scrapShare' | 'reworkShare'>;
}

/**
 * What is left of the takt for the work of every part, once stoppages, scrap, rework and occasional work are out.
 *
 * Formula: left = (D/(1 + Σ l/e))·(1 − s)/N − o − w·ρ
 *   D  working time of a day; l  mean length of a stoppage, e  working time from one to the next; s  share scrapped
 *   N  good parts wanted; o  occasional work a part; w  time of a rework, ρ  share reworked
 *   Below 0 nothing is left, and no number of people would do.
 */
export function taktLeftMs({ dayMs, partsPerDay, occasionalMs, reworkMs, days }: WantedDay): number {
  const stopped = days.stops.reduce((sum, { lengthsMs, everyMs }) => {
    const meanMs = lengthsMs.reduce((total, length) => total + length, 0) / lengthsMs.length;
    return sum + meanMs / everyMs;
  }, 0);
  const workedMs = dayMs / (1 + stopped);
  return (workedMs * (1 - days.scrapShare)) / partsPerDay - occasionalMs - reworkMs * days.reworkShare;
}
