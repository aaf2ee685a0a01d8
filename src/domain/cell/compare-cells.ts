import { type PairedComparison, pairedComparison } from '../../statistics/paired-comparison';
import { quantiles } from '../../statistics/quantiles';
import { seededRandom } from '../../statistics/seeded-random';
import { type LeadByDay, leadByDay } from './lead-by-day';
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

/** What the second run has more than the first, each at 95 %: both met the same luck, day by day. */
export interface RunDifferences {
  readonly perDay: PairedComparison;
  /** Of the day that one in ten is worse than: the interval of its difference. */
  readonly lowDay: Interval;
  /** Mean lead time, the time within which nine parts of ten are free, milliseconds, and parts inside; null where too few left. */
  readonly lead: PairedComparison | null;
  readonly leadHigh: PairedComparison | null;
  readonly inside: PairedComparison | null;
}

type Interval = Pick<PairedComparison, 'lower' | 'upper'>;

/** Enough for the two ends of a 95 % interval. */
const RESAMPLES = 400;

/**
 * The differences of two runs: of the means by paired days, of the worse day by days drawn again in pairs.
 *
 * Source: Efron & Tibshirani, An Introduction to the Bootstrap, chapter 13, for the percentile interval (from memory).
 */
export function compareRuns(before: CellRun, after: CellRun, dayMs: number): RunDifferences {
  const days = daysOfBoth(before, after);
  const [first, second] = [before.goodByDay, after.goodByDay];
  const random = seededRandom(days);
  const lowOf = (good: readonly number[], drawn: readonly number[]) =>
    quantiles(
      drawn.map((day) => good[day]!),
      [0.1],
    )[0]!;
  const differences = Array.from({ length: RESAMPLES }, () => {
    const drawn = Array.from({ length: days }, () => Math.floor(random() * days));
    return lowOf(second, drawn) - lowOf(first, drawn);
  });
  const [lower, upper] = quantiles(differences, [0.025, 0.975]) as [number, number];
  const [now, then] = [leadByDay(before, days, dayMs), leadByDay(after, days, dayMs)];
  const leads = (figure: keyof LeadByDay) => now && then && pairedComparison(now[figure], then[figure]);
  return {
    perDay: moreGood(before, after),
    lowDay: { lower, upper },
    lead: leads('mean'),
    leadHigh: leads('high'),
    inside: leads('inside'),
  };
}

const daysOfBoth = (before: CellRun, after: CellRun) =>
  Math.min(before.goodByDay.length, after.goodByDay.length);

/** Good parts that the second run gives more, a day, or an hour of so many hours a day in each. */
export function moreGood(
  before: CellRun,
  after: CellRun,
  [now, then]: readonly [number, number] = [1, 1],
): PairedComparison {
  const days = daysOfBoth(before, after);
  const rates = ({ goodByDay }: CellRun, hours: number) =>
    goodByDay.slice(0, days).map((good) => good / hours);
  return pairedComparison(rates(before, now), rates(after, then));
}

/** Whether a difference is shown at all: its interval does not hold 0. Without an interval it is not. */
export const isShown = (interval: Interval | null) =>
  interval !== null && (interval.lower > 0 || interval.upper < 0);
