import { observedMean } from '../../statistics/observed-mean';
import { partsInside } from '../../statistics/parts-inside';
import { quantiles } from '../../statistics/quantiles';
import type { CellLots } from './fold-lots';

/** Lead times of parts by one clock, milliseconds. */
export interface LeadTimes {
  /** Of each part, in the order of release. */
  readonly timesMs: readonly number[];
  readonly meanMs: number;
  readonly medianMs: number;
  readonly p80Ms: number;
  readonly p90Ms: number;
  readonly longestMs: number;
  /** Parts inside, averaged over this clock from what came and went, and by Little's law; a count each. */
  readonly meanInside: number;
  readonly insideByLittle: number;
}

/**
 * How long parts are in the cell, from arrival until they are free for the next operation; null while no lot has
 * left.
 *
 * Formula: inside = ∫ (arrived − released) dt / T, by Little λ·W with λ = parts/T
 *   W  mean lead time; T  from the first coming to the last going
 *   The two differ by the parts that are still inside, and where parts left that nobody saw arrive.
 *
 * @param clock turns a moment of the wall clock into milliseconds that count: all of them, or working time
 */
export function leadTimes({ stays, moves }: CellLots, clock: (wallMs: number) => number): LeadTimes | null {
  const timesMs = stays.flatMap(({ parts, arrivedWallMs, releasedWallMs }) => {
    const time = Math.max(0, clock(releasedWallMs) - clock(arrivedWallMs));
    return Array.from({ length: parts }, () => time);
  });
  if (timesMs.length === 0) return null;
  let inside = 0;
  let areaMs = 0;
  let before = clock(moves[0]!.wallMs);
  const began = before;
  const end = clock(stays.at(-1)!.releasedWallMs);
  for (const { wallMs, parts } of moves) {
    const at = Math.max(before, Math.min(end, clock(wallMs)));
    areaMs += inside * (at - before);
    before = at;
    inside += parts;
  }
  const spanMs = end - began;
  const meanMs = observedMean(timesMs);
  const [medianMs, p80Ms, p90Ms, longestMs] = quantiles(timesMs, [0.5, 0.8, 0.9, 1]) as [
    number,
    number,
    number,
    number,
  ];
  return {
    timesMs,
    meanMs,
    medianMs,
    p80Ms,
    p90Ms,
    longestMs,
    meanInside: spanMs > 0 ? areaMs / spanMs : 0,
    insideByLittle: spanMs > 0 ? partsInside(timesMs.length / spanMs, meanMs) : 0,
  };
}

/**
 * Process cycle efficiency: the share of its lead time in which value is added to a part.
 *
 * Formula: PCE = value-adding time on this part / its lead time
 *   Only work on the part itself counts, never what somebody does beside it, so it cannot pass 1. Where the lead
 *   time is shorter than the work, the lots were recorded wrongly, and there is no answer: null.
 */
export function processCycleEfficiency(valueAddingMs: number, leadTimeMs: number): number | null {
  return leadTimeMs > 0 && valueAddingMs <= leadTimeMs ? valueAddingMs / leadTimeMs : null;
}
