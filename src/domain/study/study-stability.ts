import { coefficientOfVariation } from '../../statistics/coefficient-of-variation';
import { halfComparison } from '../../statistics/half-comparison';
import { naturalLimits } from '../../statistics/natural-limits';
import { runsTest } from '../../statistics/runs-test';
import { trendSlope } from '../../statistics/trend-slope';
import { cycleTimes, FEWEST_FOR_INTERVAL, wholeCycles } from './study-progress';
import type { StudyRow } from './study-row';

/** Cycles in one row on one side of the mean that chance hardly gives. */
const RUN_OF_ONE_SIDE = 8;

/** Whether the cycle stood still while it was studied. A study that still changes describes a moment. */
export interface StudyStability {
  /** Rated cycle times in order, milliseconds. */
  readonly cycleMs: readonly number[];
  /** Their numbers. */
  readonly cycles: readonly number[];
  /** Both the slope and the halves agree: shorter is learning, longer is fatigue or a tool that dulls. */
  readonly trend: 'falling' | 'rising' | null;
  /** Both were tried: with fewer than ten cycles there are no halves to compare. */
  readonly isTrendTested: boolean;
  /** Change over the run along the slope, as a share; null below five cycles. */
  readonly change: number | null;
  /** The order of the cycles is not what chance gives: probability of the runs test under 5 %. */
  readonly isOutOfOrder: boolean;
  /** Natural limits around the mean, milliseconds; null below five cycles. */
  readonly limits: { readonly centre: number; readonly lower: number; readonly upper: number } | null;
  /** Places, from 0, of the cycles beyond the natural limits. */
  readonly beyond: readonly number[];
  /** Eight or more in a row on one side of the mean. */
  readonly hasLongRun: boolean;
  /** Spread of the cycle as observed and as rated, shares of their means; null below five cycles. */
  readonly spread: { readonly observed: number; readonly rated: number } | null;
}

/** Looks at whole cycles in their order. A standard may be made unless there is a trend. */
export function studyStability(rows: readonly StudyRow[]): StudyStability {
  const byHand = rows.filter(({ work }) => work !== 'machine');
  const whole = wholeCycles(byHand).filter(({ ms }) => ms > 0);
  const cycleMs = whole.map(({ ms }) => ms);
  const cycles = whole.map(({ cycle }) => cycle);
  const observedMs = cycleTimes(byHand, (row) => row.observedMs!).filter((ms) => ms > 0);
  if (cycleMs.length < FEWEST_FOR_INTERVAL) {
    return {
      cycleMs,
      cycles,
      trend: null,
      isTrendTested: false,
      change: null,
      isOutOfOrder: false,
      limits: null,
      beyond: [],
      hasLongRun: false,
      spread: null,
    };
  }
  const slope = trendSlope(cycleMs);
  const halves = halfComparison(cycleMs);
  const runs = runsTest(cycleMs);
  const { centre, upper, ...natural } = naturalLimits(cycleMs);
  // No cycle takes less than no time: below nothing there is no limit to stray beyond.
  const lower = Math.max(0, natural.lower);
  const direction = slope.tested ? slope.direction : 'not-shown';
  const agrees = halves.tested && halves.direction === direction;
  return {
    cycleMs,
    cycles,
    trend: agrees && direction !== 'not-shown' ? direction : null,
    isTrendTested: slope.tested && halves.tested,
    change: slope.tested ? slope.changeOverRun : null,
    isOutOfOrder: runs.tested && runs.probability < 0.05,
    limits: { centre, lower, upper },
    beyond: cycleMs.flatMap((ms, place) => (ms < lower || ms > upper ? [place] : [])),
    hasLongRun: longestRun(cycleMs, centre) >= RUN_OF_ONE_SIDE,
    spread: {
      observed: coefficientOfVariation(observedMs),
      rated: coefficientOfVariation(cycleMs),
    },
  };
}

function longestRun(times: readonly number[], centre: number): number {
  let longest = 0;
  let run = 0;
  let side = 0;
  for (const time of times) {
    const own = Math.sign(time - centre);
    run = own !== 0 && own === side ? run + 1 : 1;
    side = own;
    longest = Math.max(longest, run);
  }
  return longest;
}
