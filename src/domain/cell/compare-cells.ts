import { type PairedComparison, pairedComparison } from '../../statistics/paired-comparison';
import { quantiles } from '../../statistics/quantiles';
import { seededRandom } from '../../statistics/seeded-random';
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

/** More good parts in the second run than in the first, at 95 %: both met the same luck, day by day. */
export interface MoreGood {
  readonly perDay: PairedComparison;
  /** Of the day that one in ten is worse than: the interval of its difference. */
  readonly lowDay: Pick<PairedComparison, 'lower' | 'upper'>;
}

/** Enough for the two ends of a 95 % interval. */
const RESAMPLES = 400;

/**
 * The differences of two runs: of the mean by paired days, of the worse day by days drawn again in pairs.
 *
 * Source: Efron & Tibshirani, An Introduction to the Bootstrap, chapter 13, for the percentile interval (from memory).
 */
export function moreGoodParts(before: CellRun, after: CellRun): MoreGood {
  const days = Math.min(before.goodByDay.length, after.goodByDay.length);
  const [first, second] = [before.goodByDay.slice(0, days), after.goodByDay.slice(0, days)];
  const random = seededRandom(days);
  const lowOf = (good: readonly number[], drawn: readonly number[]) =>
    quantiles(
      drawn.map((day) => good[day]!),
      [0.1],
    )[0]!;
  const differences = Array.from({ length: RESAMPLES }, () => {
    const drawn = first.map(() => Math.floor(random() * days));
    return lowOf(second, drawn) - lowOf(first, drawn);
  });
  const [lower, upper] = quantiles(differences, [0.025, 0.975]) as [number, number];
  return { perDay: pairedComparison(first, second), lowDay: { lower, upper } };
}

/** Whether a difference is shown at all: its interval does not hold 0. */
export const isShown = ({ lower, upper }: Pick<PairedComparison, 'lower' | 'upper'>) =>
  lower > 0 || upper < 0;
