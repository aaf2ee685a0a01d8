import { pairedComparison } from '../../statistics/paired-comparison';
import { quantile } from '../../statistics/quantile';
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

/** @throws {RangeError} quantile requires at least one reading */
export function summariseRun({ goodByDay, leadTimesMs, meanInside }: CellRun): CellRunSummary {
  const leads = Array.from(leadTimesMs);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    meanGood: mean(goodByDay),
    lowGood: quantile(goodByDay, 0.1),
    medianGood: quantile(goodByDay, 0.5),
    highGood: quantile(goodByDay, 0.9),
    meanLeadMs: mean(leads),
    medianLeadMs: quantile(leads, 0.5),
    highLeadMs: quantile(leads, 0.9),
    meanInside,
  };
}

/** More good parts a day in the second run than in the first, day by day, at 95 %: both met the same luck. */
export function moreGoodParts(before: CellRun, after: CellRun) {
  const days = Math.min(before.goodByDay.length, after.goodByDay.length);
  return pairedComparison(before.goodByDay.slice(0, days), after.goodByDay.slice(0, days));
}
