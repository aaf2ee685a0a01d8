import { observedMean } from '../../statistics/observed-mean';
import { partsInside } from '../../statistics/parts-inside';
import { quantiles } from '../../statistics/quantiles';
import type { CellLots } from './fold-lots';

/** Percentiles of fewer parts are those of single parts. */
const ENOUGH_PARTS = 10;
/** A cell that stood still so long in between was left: for the night, or for days. */
const LEFT_ALONE_MS = 4 * 3_600_000;

/** Lead times of parts by one clock, milliseconds. */
export interface LeadTimes {
  /** Of each part that did not stay while the cell was left, in the order of release. */
  readonly timesMs: readonly number[];
  readonly meanMs: number;
  readonly longestMs: number;
  readonly medianMs: number;
  readonly p80Ms: number;
  readonly p90Ms: number;
  /** There are parts enough for the three to mean something. */
  readonly isEnough: boolean;
  /** Parts that stayed while the cell was left, which is no matter of the cell: only the clock on the wall counts that. */
  readonly overnight: number;
  /** Parts inside, averaged over this clock from what came and went, and by Little's law; a count each. All parts. */
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
 * @param working turns it into working time, to tell who stayed overnight; left out where that is not known
 */
export function leadTimes(
  { stays, moves }: CellLots,
  clock: (wallMs: number) => number,
  working: (wallMs: number) => number = clock,
): LeadTimes | null {
  const each = stays.flatMap(({ parts, arrivedWallMs, releasedWallMs }) => {
    const timeMs = Math.max(0, clock(releasedWallMs) - clock(arrivedWallMs));
    const workedMs = Math.max(0, working(releasedWallMs) - working(arrivedWallMs));
    return Array.from({ length: parts }, () => ({ timeMs, isOvernight: timeMs - workedMs > LEFT_ALONE_MS }));
  });
  if (each.length === 0) return null;
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
  const sameDay = each.filter(({ isOvernight }) => !isOvernight);
  // Where all of them stayed overnight, they are what there is.
  const timesMs = (sameDay.length > 0 ? sameDay : each).map(({ timeMs }) => timeMs);
  const [medianMs, p80Ms, p90Ms] = quantiles(timesMs, [0.5, 0.8, 0.9]) as [number, number, number];
  return {
    timesMs,
    meanMs: observedMean(timesMs),
    longestMs: timesMs.reduce((longest, timeMs) => Math.max(longest, timeMs), 0),
    medianMs,
    p80Ms,
    p90Ms,
    isEnough: timesMs.length >= ENOUGH_PARTS,
    overnight: sameDay.length > 0 ? each.length - sameDay.length : 0,
    meanInside: spanMs > 0 ? areaMs / spanMs : 0,
    insideByLittle:
      spanMs > 0 ? partsInside(each.length / spanMs, observedMean(each.map(({ timeMs }) => timeMs))) : 0,
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
