import { pairedComparison } from '../../statistics/paired-comparison';
import { quantiles } from '../../statistics/quantiles';
import type { CellRun } from './simulate-cell';

/** A simulated run in the figures that a shop decides by. Times in working milliseconds. */
export interface CellRunSummary {
  /** Good parts a day: mean, and the day that one in ten is worse than, half are, and nine in ten. */
  readonly meanGood: number;
  readonly lowGood: number;
  readonly medianGood: number;
  readonly highGood: number;
  readonly meanLeadMs: number;
  readonly medianLeadMs: number;
  readonly highLeadMs: number;
  readonly meanInside: number;
}

/** @throws {RangeError} quantiles requires at least one reading */
export function summariseRun({ goodByDay, leadTimesMs, meanInside }: CellRun): CellRunSummary {
  const [lowGood, medianGood, highGood] = quantiles(goodByDay, [0.1, 0.5, 0.9]) as [number, number, number];
  const [medianLeadMs, highLeadMs] = quantiles(leadTimesMs, [0.5, 0.9]) as [number, number];
  return {
    meanGood: goodByDay.reduce((sum, good) => sum + good, 0) / goodByDay.length,
    lowGood,
    medianGood,
    highGood,
    meanLeadMs: leadTimesMs.reduce((sum, time) => sum + time, 0) / leadTimesMs.length,
    medianLeadMs,
    highLeadMs,
    meanInside,
  };
}

/** More good parts a day in the second run than in the first, day by day, at 95 %: both met the same luck. */
export function moreGoodParts(before: CellRun, after: CellRun) {
  const days = Math.min(before.goodByDay.length, after.goodByDay.length);
  return pairedComparison(before.goodByDay.slice(0, days), after.goodByDay.slice(0, days));
}
