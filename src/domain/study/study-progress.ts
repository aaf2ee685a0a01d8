import { meanInterval } from '../../statistics/mean-interval';
import { observedMean } from '../../statistics/observed-mean';
import { requiredReadingsIterated } from '../../statistics/required-readings-iterated';
import { sampleStandardDeviation } from '../../statistics/sample-standard-deviation';
import { totalUncertainty } from '../../statistics/total-uncertainty';
import { groupBy } from '../group-by';
import type { StudyRow } from './study-row';
import { type PrecisionAsked, usualPrecision } from './summarise-study';

/** Below this the readings themselves say more than an interval. */
export const FEWEST_FOR_INTERVAL = 5;
/** The usual aim of rating practice, ±5 %, as a share. More readings do not shrink it. */
export const RATING_UNCERTAINTY = 0.05;

/** How far a study has come as a whole: precision is asked of the cycle, not of each element. */
export interface StudyProgress {
  /** Cycles with every element used, and the rated time of each, milliseconds. */
  readonly cycleMs: readonly number[];
  /** Half-width of the interval of the cycle as a share; null below five cycles. */
  readonly precision: number | null;
  /** Cycles still to take for the precision asked; null when it cannot be said yet. */
  readonly more: number | null;
  /** The element that spreads the cycle most; null when none does. */
  readonly watchNext: string | null;
  /** The interval is under half the rating's own uncertainty on what was rated: another operator narrows what is left. */
  readonly moreCannotHelp: boolean;
}

/**
 * The progress of a study from its rows.
 *
 * A cycle's time is its rated external work and the longer of internal work and the machine's run. The element to
 * watch is that with the largest variance for each work unit: its readings widen the interval most.
 */
export function studyProgress(
  rows: readonly StudyRow[],
  asked: PrecisionAsked = usualPrecision,
  inMethod?: number,
): StudyProgress {
  const whole = wholeCycles(rows, ratedMs, inMethod);
  const cycleMs = whole.map(({ ms }) => ms);
  const n = cycleMs.length;
  const isEnough = n >= FEWEST_FOR_INTERVAL && observedMean(cycleMs) > 0;
  const interval = isEnough ? meanInterval(cycleMs, asked.confidence) : null;
  const precision = interval?.relativeHalfWidth ?? null;
  const needed = interval
    ? requiredReadingsIterated({
        mean: interval.mean,
        standardDeviation: interval.standardDeviation,
        ...asked,
      })
    : null;
  return {
    cycleMs,
    precision,
    more: needed === null ? null : Math.max(0, needed - n),
    watchNext: widest(rows),
    // Nobody judges the pace of a machine: the rating leaves open only what was rated.
    moreCannotHelp:
      precision !== null &&
      totalUncertainty({ sampling: precision, rating: RATING_UNCERTAINTY * ratedOf(whole), frequency: 0 })
        .moreReadingsCannotHelp,
  };
}

const ratedMs = ({ observedMs, ratingPct }: StudyRow) => (observedMs! * ratingPct) / 100;

function ratedOf(whole: ReturnType<typeof wholeCycles>): number {
  return whole.reduce((sum, { ms, unratedMs }) => sum + 1 - unratedMs / ms, 0) / whole.length;
}

/** Rated times of the cycles in which every repetitive element was used, in the order of the study. */
export function cycleTimes(rows: readonly StudyRow[], timeOf = ratedMs): number[] {
  return wholeCycles(rows, timeOf).map(({ ms }) => ms);
}

/** The same with the numbers of the cycles. A cycle in hand is none: `inMethod` says how many elements make one. */
export function wholeCycles(
  rows: readonly StudyRow[],
  timeOf = ratedMs,
  inMethod = 0,
): { readonly cycle: number; readonly ms: number; readonly unratedMs: number }[] {
  const inCycle = rows.filter(({ elementClass }) => elementClass === 'repetitive');
  const elements = Math.max(inMethod, new Set(inCycle.map(({ element }) => element)).size);
  return [...groupBy(inCycle, ({ cycle }) => cycle)]
    .sort(([a], [b]) => a - b)
    .flatMap(([cycle, own]) => {
      const isWhole = own.every(({ excluded, observedMs }) => excluded === null && observedMs !== null);
      if (!isWhole || new Set(own.map(({ element }) => element)).size < elements) return [];
      let external = 0;
      let internal = 0;
      let machine = 0;
      for (const row of own) {
        if (row.work === 'machine') machine += timeOf(row);
        else if (row.placement === 'internal') internal += timeOf(row);
        else external += timeOf(row);
      }
      const ms = machine > 0 ? external + Math.max(internal, machine) : external + internal;
      return [{ cycle, ms, unratedMs: machine > 0 && machine >= internal ? machine : 0 }];
    });
}

function widest(rows: readonly StudyRow[]): string | null {
  const used = rows.filter(
    ({ elementClass, excluded, observedMs }) =>
      elementClass !== 'foreign' && excluded === null && observedMs !== null,
  );
  let most = 0;
  let found: string | null = null;
  for (const [element, own] of groupBy(used, (row) => row.element)) {
    if (own.length < 2) continue;
    const perUnit = sampleStandardDeviation(own.map(ratedMs)) / own[0]!.unitsPerOccurrence;
    if (perUnit <= most) continue;
    most = perUnit;
    found = element;
  }
  return found;
}
